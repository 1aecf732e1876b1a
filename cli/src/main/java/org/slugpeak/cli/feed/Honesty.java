package org.slugpeak.cli.feed;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.cli.words.GeneratorPhrase;
import org.slugpeak.core.decibel.Decibels;

/**
 * Holds what the reading did against what the generator says it did. A detector makes one to two decibels of one, gain control less
 * than one; what lies well outside is told. One thread: the session's.
 */
final class Honesty {

    /** The square law of a weak signal; common practice, no source. */
    private static final double MOST_RATIO = 2;

    private static final double MORE_DB = 1.5;

    /** Gain control that leaves less than this would flatten any peak; common practice, no source. */
    private static final double LEAST_RATIO = 0.25;

    /** Once the detector's law is known a decibel is a decibel; what the law may be wrong by beyond its steps is less. */
    private static final double LAWFUL_DB = 1.5;

    private OptionalDouble saidDb = OptionalDouble.empty();
    private boolean lawful;

    /** From now on readings are decibels of the signal. */
    void lawIsKnown() {
        lawful = true;
    }

    void says(double factor) {
        saidDb = OptionalDouble.of(Decibels.of(factor));
    }

    Optional<String> judge(double readDb) {
        OptionalDouble said = saidDb;
        saidDb = OptionalDouble.empty();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        double db = said.getAsDouble();
        double along = readDb * Math.signum(db);
        boolean honest = lawful
                ? Math.abs(along - Math.abs(db)) <= LAWFUL_DB
                : along >= LEAST_RATIO * Math.abs(db) && along <= MOST_RATIO * Math.abs(db) + MORE_DB;
        return honest ? Optional.empty() : Optional.of(GeneratorPhrase.OTHERWISE.of(db, readDb));
    }
}
