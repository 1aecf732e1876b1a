package org.slugpeak.bridge.frame;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A table of codes. Immutable.
 *
 * @param place where the code stands
 * @param codes what each means: hexadecimal digits in upper case, or letters without blanks in upper case
 * @param otherwise what all others mean; empty where there are no others in a sound frame
 */
record Lookup(Place place, Map<String, Meaning> codes, Optional<Meaning> otherwise) {

    /** Gives what stands at a place of a frame, as it is written in a table. */
    @FunctionalInterface
    interface Place {

        String of(byte[] frame);

        /** A number, in hexadecimal digits. */
        static Place number(Bits bits) {
            String form = "%0" + bits.digits() + "X";
            return frame -> String.format(Locale.ROOT, form, bits.of(frame));
        }

        /** Letters, whatever blanks stand between them. */
        static Place text(TextField field) {
            return frame -> field.of(frame).toUpperCase(Locale.ROOT);
        }
    }

    Optional<Meaning> of(byte[] frame) {
        return Optional.ofNullable(codes.get(place.of(frame))).or(() -> otherwise);
    }

    /** Whether it holds nothing but factors: then it counts only where the number does. */
    boolean isScale() {
        return codes.values().stream().allMatch(each -> each.marks().isEmpty())
                && codes.values().stream().anyMatch(each -> each.factor() != 1);
    }
}
