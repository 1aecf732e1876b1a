package org.slugpeak.core.signal;

import org.slugpeak.core.decibel.Decibels;

/**
 * Sees the set's own audio stage overdriven: distortion that has risen, from what it was when the tone was cleanest, while
 * the level has hardly done so. A hard-limited sine gains 0.9 dB in its fundamental while its distortion goes from nothing
 * to 5 percent, and 2.1 dB at most; a tone that merely sinks into its own distortion has lost level and is not meant.
 */
final class StageOverload {

    private static final double LEAST = 0.05;
    private static final double GROWTH = 2;
    private static final double LEVEL_DB = 1.5;
    private static final double HIGH = 0.10;
    private static final double CERTAIN = 0.20;
    private static final double CLEARS_AT = 0.8;
    private static final double SAME = 1.2;

    private double calmDistortion = Double.NaN;
    private double calmLevelDb;
    private double tripped;

    void see(double level, double distortion) {
        if (Double.isNaN(distortion) || !(level > 0)) {
            return;
        }
        double levelDb = Decibels.of(level);
        if (tripped > 0) {
            if (distortion < CLEARS_AT * tripped) {
                tripped = 0;
            }
            return;
        }
        if (distortion >= CERTAIN || risen(levelDb, distortion)) {
            tripped = Math.min(distortion, HIGH);
        } else if (Double.isNaN(calmDistortion) || distortion <= Math.max(SAME * calmDistortion, LEAST / GROWTH)) {
            calmDistortion = Double.isNaN(calmDistortion) ? distortion : Math.min(calmDistortion, distortion);
            calmLevelDb = levelDb;
        }
    }

    boolean present() {
        return tripped > 0;
    }

    private boolean risen(double levelDb, double distortion) {
        double gainDb = levelDb - calmLevelDb;
        return distortion >= Math.max(LEAST, GROWTH * calmDistortion)
                && gainDb > -LEVEL_DB
                && (gainDb < LEVEL_DB || distortion >= HIGH);
    }
}
