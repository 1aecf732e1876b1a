package org.slugpeak.cli.check;

import java.util.Locale;
import java.util.OptionalDouble;

/** Says beside a measured figure what it should have been, where that is stated. */
public final class BoundText {

    private BoundText() {}

    static String atLeast(OptionalDouble bound, OptionalDouble measured, double scale, String suffix) {
        return bound.isPresent() && measured.isPresent()
                ? text("at least", bound.getAsDouble(), measured.getAsDouble() >= bound.getAsDouble(), scale, suffix)
                : "";
    }

    static String atMost(OptionalDouble bound, OptionalDouble measured, double scale, String suffix) {
        return bound.isPresent() && measured.isPresent()
                ? text("at most", bound.getAsDouble(), measured.getAsDouble() <= bound.getAsDouble(), scale, suffix)
                : "";
    }

    private static String text(String relation, double bound, boolean met, double scale, String suffix) {
        return String.format(
                Locale.ROOT, "; should be %s %.4g%s: %s", relation, bound * scale, suffix, met ? "it is" : "IT IS NOT");
    }
}
