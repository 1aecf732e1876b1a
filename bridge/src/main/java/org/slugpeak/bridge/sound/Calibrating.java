package org.slugpeak.bridge.sound;

import java.util.Locale;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Reading;

/**
 * Finds the scale of a sound input from a known voltage: readings relative to full scale go in until they are enough, and a
 * scale comes out, or what stood in its way. The source is opened with {@link SoundOptions#withVoltsPerFullScale} of 1, so that
 * an older calibration plays no part.
 *
 * <p>One thread at a time.
 */
public final class Calibrating {

    /** How many good readings are averaged: one second of the usual ones. */
    public static final int READINGS = 50;

    private static final int PATIENCE = 6 * READINGS;
    private static final double STEADY_DB = 0.2;
    private static final double FAINT_FS = 0.001;

    private final double volts;
    private final double[] levels = new double[READINGS];
    private int good;
    private int seen;
    private int clipped;

    /**
     * How it went. Immutable; any thread may use it.
     *
     * @param voltsPerFullScale RMS volts of a full-scale sine; NaN where it was refused
     * @param levelFs mean of the readings, FS; NaN where there were too few
     * @param spreadDb from the smallest to the largest of them, dB; NaN where there were too few
     * @param problem what stood in the way and what to do, one line; empty where nothing did
     */
    public record Outcome(double voltsPerFullScale, double levelFs, double spreadDb, String problem) {

        /**
         * Whether there is a scale.
         *
         * @return true where nothing stood in the way
         */
        public boolean isGood() {
            return problem.isEmpty();
        }
    }

    /**
     * Begins with a known voltage.
     *
     * @param volts RMS at the input; positive
     * @throws IllegalArgumentException if it is not positive
     */
    public Calibrating(double volts) {
        if (!(volts > 0 && volts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the known voltage must be positive, not " + volts);
        }
        this.volts = volts;
    }

    /**
     * Takes a reading.
     *
     * @param reading in FS
     */
    public void take(Reading reading) {
        if (enough()) {
            return;
        }
        seen++;
        switch (reading.condition()) {
            case OK -> levels[good++] = reading.value();
            case CLIPPING, FULL_SCALE -> clipped++;
            default -> good = 0;
        }
    }

    /**
     * Whether more readings would change nothing.
     *
     * @return true after {@link #READINGS} good ones, or when six times as many have come in vain
     */
    public boolean enough() {
        return good == READINGS || seen >= PATIENCE;
    }

    /**
     * What came of it.
     *
     * @return a scale or a problem
     */
    public Outcome outcome() {
        if (clipped > 0) {
            return refused("the sound input clips: turn its level down and calibrate again");
        }
        if (good < READINGS) {
            return refused("no steady tone is heard: feed a sine of 300 to 1100 Hz and the stated voltage");
        }
        double sum = 0;
        double least = Double.MAX_VALUE;
        double most = 0;
        for (double level : levels) {
            sum += level;
            least = Math.min(least, level);
            most = Math.max(most, level);
        }
        double mean = sum / READINGS;
        double spreadDb = Decibels.of(most / least);
        if (mean < FAINT_FS) {
            return refused(
                    "the tone is more than 60 dB below full scale: turn the input's level up and calibrate again");
        }
        if (!(spreadDb <= STEADY_DB)) {
            return refused(String.format(
                    Locale.ROOT,
                    "the level wanders by %.1f dB: wait until it is steady and calibrate again",
                    spreadDb));
        }
        return new Outcome(volts / mean, mean, spreadDb, "");
    }

    private static Outcome refused(String problem) {
        return new Outcome(Double.NaN, Double.NaN, Double.NaN, problem);
    }
}
