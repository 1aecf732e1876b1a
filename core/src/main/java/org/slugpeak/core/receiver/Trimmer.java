package org.slugpeak.core.receiver;

/**
 * A trimmer whose capacitance follows its turns in proportion, across a fixed part. Real compression trimmers bend; that it is
 * straight is an assumption. Immutable; any thread may use it.
 *
 * @param lowestFarad unscrewed; positive
 * @param highestFarad screwed home; more than the lowest
 * @param turns from the one to the other; positive
 */
public record Trimmer(double lowestFarad, double highestFarad, double turns) {

    /**
     * What it adds when it is turned from the middle of its way.
     *
     * @param turnsIn from there; beyond the ends nothing changes
     * @return farad; negative where it is unscrewed
     */
    public double changeFarad(double turnsIn) {
        return farad(turns / 2 + turnsIn) - farad(turns / 2);
    }

    /**
     * Its capacitance.
     *
     * @param turnsIn from unscrewed; beyond the ends nothing changes
     * @return farad
     */
    public double farad(double turnsIn) {
        double share = Math.min(1, Math.max(0, turnsIn / turns));
        return lowestFarad + share * (highestFarad - lowestFarad);
    }
}
