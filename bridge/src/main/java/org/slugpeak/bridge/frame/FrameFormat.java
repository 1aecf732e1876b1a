package org.slugpeak.bridge.frame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.source.Checksum;

/**
 * What the frames of one family look like. Immutable.
 *
 * @param title what to call the meter
 * @param pattern what each byte must be
 * @param parity of a line with seven data bits, which some adapters leave in bit 7; empty on a line with eight
 * @param number how the number is carried
 * @param flags bits with a meaning of their own
 * @param tables codes with a meaning
 * @param checksum how a frame is protected
 * @param sentTwice whether the meter sends each frame twice
 * @param asking what must be sent, and when
 */
record FrameFormat(
        String title,
        BytePattern pattern,
        Optional<ParityView> parity,
        FrameNumber number,
        Map<Bits, FrameMark> flags,
        List<Lookup> tables,
        Optional<FrameChecksum> checksum,
        boolean sentTwice,
        FrameAsking asking) {

    /**
     * A checksum in a frame.
     *
     * @param kind how it is computed
     * @param from index of the first byte that is summed
     * @param to index behind the last
     * @param at where the sum stands
     */
    record FrameChecksum(Checksum kind, int from, int to, Bits at) {

        boolean isRight(byte[] frame) {
            return kind.of(frame, from, to) == at.of(frame);
        }
    }
}
