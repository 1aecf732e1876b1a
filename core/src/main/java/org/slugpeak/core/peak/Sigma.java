package org.slugpeak.core.peak;

/** Arithmetic of standard deviations that neither overflows nor costs much. */
final class Sigma {

    private Sigma() {}

    /** Of a difference of two independent values. */
    static double ofDifference(double a, double b) {
        double larger = Math.max(a, b);
        double ratio = Math.min(a, b) / larger;
        return larger > 0 ? larger * Math.sqrt(1 + ratio * ratio) : larger;
    }
}
