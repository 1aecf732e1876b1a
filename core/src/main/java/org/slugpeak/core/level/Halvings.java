package org.slugpeak.core.level;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;

/**
 * What two halvings of the generator took off the reading above rest, and whether something compresses.
 *
 * <p>A detector by itself never falls by less than the generator does, 6.02 dB: its exponent is 1 at least. A valve diode falls by
 * more, and by yet more the second time, since it comes nearer to its square law; gain control takes more off the first fall than
 * off the second. So the excess of the first fall over 6.02 dB is held against that of the second.
 *
 * <p>Where the border lies is taken from shared/reference/detector/halving.csv, rows of joined valve diodes, rises of 0.5 to 1.5 V,
 * rests of at most 0.5 V, sources of 0 and 127 kilohm: the first excess of clean cases is the share of the second and at least
 * 0.07 dB more; with 1.4 dB of the first fall taken away by a gain control in proportion to its voltage, delayed or not, it is at
 * least 0.07 dB less. Immutable.
 *
 * @param firstDb by which the reading fell at the first halving, dB
 * @param secondDb at the second, dB; empty where it was not made
 */
record Halvings(double firstDb, OptionalDouble secondDb) {

    private static final double HALF_DB = Decibels.of(2);

    /** Less than this is no scatter of readings that stand within 0.05 dB each. */
    private static final double LEAST_DB = 5.9;

    private static final double CLEAN_SHARE = 1 / 2.15;

    /** A meter that follows the generator to the letter shows less of an excess than this; it comes from scatter, and tells nothing. */
    private static final double LEAST_EXCESS_DB = 0.3;

    /** Of the usual clean detector, by the same table: 1 / 1.6 to 1 / 1.8. */
    private static final double USUAL_SHARE = 1 / 1.7;

    /** Whether no detector alone would fall so little, so that the second halving can tell no more. */
    boolean isTooLittle() {
        return firstDb < LEAST_DB;
    }

    /** Whether the set hides a part of what the generator does. */
    boolean isCompressed() {
        boolean tells = excessDb() > LEAST_EXCESS_DB;
        return isTooLittle() || (tells && firstDb - HALF_DB < CLEAN_SHARE * excessDb());
    }

    /** How the reading follows: decibels of the reading over those that it would fall by if nothing compressed. */
    double slope() {
        boolean hidden = isCompressed() && !isTooLittle();
        return firstDb / (hidden ? HALF_DB + USUAL_SHARE * excessDb() : HALF_DB);
    }

    private double excessDb() {
        return Math.max(0, secondDb.orElse(HALF_DB) - HALF_DB);
    }
}
