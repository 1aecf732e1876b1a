package org.slugpeak.core.steps;

/** What rounding to a last digit does to a reading. Stateless. */
final class Rounding {

    private Rounding() {}

    /** One sigma: a reading is anywhere within half a unit to either side, all of it alike (JCGM 100:2008 F.2.2.1). */
    static double sigma(double resolution) {
        return resolution / Math.sqrt(12);
    }
}
