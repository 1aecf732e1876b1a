package org.slugpeak.core.generator;

/**
 * What of a generator is set from here, and how far it reaches. Immutable; any thread may use it.
 *
 * @param setsLevel whether its level is set from here
 * @param switchesOutput whether its output is switched from here
 * @param modulates whether its modulation is set from here
 * @param lowestHz least frequency, Hz; minus infinite where nobody said
 * @param highestHz greatest frequency, Hz; infinite where nobody said
 * @param lowestEmfVolts least level, volts EMF; 0 where nobody said
 * @param highestEmfVolts greatest level, volts EMF; infinite where nobody said
 * @param levelUnit in which it counts its level
 * @param settlingNanos from its answer until the signal stands, ns
 */
public record GeneratorReach(
        boolean setsLevel,
        boolean switchesOutput,
        boolean modulates,
        double lowestHz,
        double highestHz,
        double lowestEmfVolts,
        double highestEmfVolts,
        LevelUnit levelUnit,
        long settlingNanos) {

    /**
     * Whether a move of a check is made from here.
     *
     * @param move what it does to the generator
     * @return true where nothing of it needs a hand
     */
    public boolean makes(GeneratorMove move) {
        boolean off = move.levelFactor() == 0;
        boolean turned = !off && move.levelFactor() != 1;
        return (!off || switchesOutput) && (!turned || setsLevel);
    }

    /**
     * Whether it gives a frequency.
     *
     * @param hz wanted, Hz
     * @return false outside of its limits, as far as they are known
     */
    public boolean gives(double hz) {
        return hz >= lowestHz && hz <= highestHz;
    }

    /**
     * The nearest level that it reaches.
     *
     * @param emfVolts wanted, volts EMF
     * @return volts EMF
     */
    public double nearestEmfVolts(double emfVolts) {
        return Math.min(highestEmfVolts, Math.max(lowestEmfVolts, emfVolts));
    }
}
