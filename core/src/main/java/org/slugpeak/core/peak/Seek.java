package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/**
 * What the user turns for, and what follows from it: which way is nearer, how far a reading is, whether its sign counts.
 * Another thing to turn for is one more constant, and an arm of each switch that the compiler then asks for.
 * Immutable; any thread may use it.
 */
public enum Seek implements Coded {
    /** The greatest magnitude: almost every tuned circuit. */
    PEAK("peak", Trend.RISING, false),
    /** The smallest magnitude: wave traps. */
    DIP("dip", Trend.FALLING, false),
    /** The zero between a positive and a negative swing: discriminators and ratio detectors. */
    ZERO("zero", Trend.FALLING, true);

    private final String code;
    private final Trend nearer;
    private final int direction;
    private final boolean signCounts;

    Seek(String code, Trend nearer, boolean signCounts) {
        this.code = code;
        this.nearer = nearer;
        this.direction = nearer == Trend.RISING ? 1 : -1;
        this.signCounts = signCounts;
    }

    /** Of larger magnitudes: 1 where they are nearer, -1 where they are further away. */
    int direction() {
        return direction;
    }

    @Override
    public String code() {
        return code;
    }

    /**
     * Which way the magnitude goes while the reading comes nearer.
     *
     * @return rising or falling
     */
    public Trend nearer() {
        return nearer;
    }

    /**
     * Which way the magnitude goes while the reading goes further away.
     *
     * @return rising or falling
     */
    public Trend away() {
        return direction > 0 ? Trend.FALLING : Trend.RISING;
    }

    /**
     * Whether the strongest signal is sought. Only there is the level a measure of its own noise and drift, and of the speed at which it is
     * turned.
     *
     * @return true for a peak
     */
    public boolean seeksStrongest() {
        return direction > 0;
    }

    /**
     * Whether the sign of a reading counts. Where it does a reading has no ratio to the best, and no decibels.
     *
     * @return true for a zero
     */
    public boolean signCounts() {
        return signCounts;
    }

    /**
     * By how much one magnitude is better than another.
     *
     * @param magnitude not negative, in the unit of the other
     * @param than not negative, in the unit of the one
     * @return in that unit; negative where it is worse
     */
    public double better(double magnitude, double than) {
        return direction > 0 ? magnitude - than : than - magnitude;
    }

    /**
     * How far a reading is on the wrong side of the best.
     *
     * @param ofBest magnitude of the reading over that of the best, ratio, 0 or more; NaN while there is no best
     * @return dB; negative where it is better than the best, infinite for a ratio of 0; NaN while there is no best, and where the sign counts
     */
    public double distanceDb(double ofBest) {
        return signCounts ? Double.NaN : -direction * Decibels.of(ofBest);
    }

    /**
     * Finds what a word asks for.
     *
     * @param code {@code peak}, {@code dip} or {@code zero}
     * @return what to seek
     * @throws Refused for any other word
     */
    public static Seek ofCode(String code) throws Refused {
        return Coded.find(Seek.class, code).orElseThrow(() -> new Refused("'" + code + "' is none of peak, dip, zero"));
    }
}
