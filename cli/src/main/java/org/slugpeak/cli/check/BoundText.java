package org.slugpeak.cli.check;

import java.util.OptionalDouble;
import org.slugpeak.cli.words.CheckPhrase;

/** Says beside a measured figure what it should have been, where that is stated. */
public final class BoundText {

    private BoundText() {}

    static String atLeast(OptionalDouble bound, OptionalDouble measured, double scale, String suffix) {
        return bound.isPresent() && measured.isPresent()
                ? text(
                        CheckPhrase.AT_LEAST,
                        bound.getAsDouble(),
                        measured.getAsDouble() >= bound.getAsDouble(),
                        scale,
                        suffix)
                : "";
    }

    static String atMost(OptionalDouble bound, OptionalDouble measured, double scale, String suffix) {
        return bound.isPresent() && measured.isPresent()
                ? text(
                        CheckPhrase.AT_MOST,
                        bound.getAsDouble(),
                        measured.getAsDouble() <= bound.getAsDouble(),
                        scale,
                        suffix)
                : "";
    }

    private static String text(CheckPhrase relation, double bound, boolean met, double scale, String suffix) {
        return relation.of(bound * scale, suffix, (met ? CheckPhrase.IT_IS : CheckPhrase.IT_IS_NOT).of());
    }
}
