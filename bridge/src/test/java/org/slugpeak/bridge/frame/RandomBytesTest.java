package org.slugpeak.bridge.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.FaultyLine;
import org.slugpeak.bridge.testkit.WorkedFrame;

/** None of these families has a checksum: how rarely bytes without a meaning are taken for a voltage all the same. */
class RandomBytesTest {

    private static final int BYTES = 300_000;
    private static final int FRAMES = 200_000;

    static List<String> families() throws IOException {
        return WorkedFrame.all().stream()
                .map(WorkedFrame::description)
                .distinct()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("families")
    void giveNoReading(String family) throws Exception {
        byte[] noise = FaultyLine.noise(BYTES, new SplittableRandom(family.hashCode()));
        assertEquals(
                List.of(), DecoderDrive.feed(decoder(family), List.of(noise)).readings());
    }

    /**
     * The fixed bits of a frame are right by chance once in two to their power; of frames with right fixed bits the share that
     * passes is counted. The product is the chance that a frame begins at any one byte; where none passed one is
     * counted, so that the bound errs upwards.
     */
    @ParameterizedTest
    @CsvSource({
        "fs9721, 1e-19",
        "dtm0660, 1e-20",
        "fs9922, 3e-13",
        "es519xx-14, 1e-17",
        "es519xx-11-2400, 1e-14",
        "ut71x, 1e-14",
        "lutron16, 1e-13",
        "qm1578, 1e-13",
        "metex14, 1e-6"
    })
    void passHardlyEverEvenWhereTheFrameIsRight(String family, double mostAtAnyByte) throws Exception {
        FrameFormat format = decoder(family).format();
        FrameReader reader = new FrameReader(format);
        SplittableRandom random = new SplittableRandom(11);
        int passed = 0;
        byte[] frame = new byte[format.pattern().length()];
        for (int i = 0; i < FRAMES; i++) {
            random.nextBytes(frame);
            passed += reader.read(format.pattern().imposedOn(frame)) instanceof MeterFrame.Volts volts
                            && volts.doubt().isEmpty()
                    ? 1
                    : 0;
        }
        double share = Math.max(1, passed) / (double) FRAMES;
        double atAnyByte = share * Math.pow(2, -format.pattern().fixedBits());
        assertTrue(atAnyByte <= mostAtAnyByte, family + ": " + atAnyByte + ", " + passed + " of " + FRAMES + " passed");
    }

    private static FrameDecoder decoder(String family) throws Exception {
        return (FrameDecoder) Instruments.create().find(family).decoders().create(MeterSetting.DEFAULT);
    }
}
