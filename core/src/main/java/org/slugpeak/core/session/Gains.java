package org.slugpeak.core.session;

import java.util.List;

/**
 * What the adjusters of a session have gained in all. Immutable; any thread may use it.
 *
 * @param adjustments how many were done, with those whose gain is not known
 * @param sums one for each path of the signal, in the order in which they were begun
 * @param zeros each as it was left last, in the order in which they were begun
 */
public record Gains(int adjustments, List<Sum> sums, List<Zero> zeros) {

    /**
     * What was gained along one path.
     *
     * @param path its name; empty where nobody has named it
     * @param gainDb sum, dB; of a dip negative
     * @param adjustments how many
     */
    public record Sum(String path, double gainDb, int adjustments) {

        Sum and(Sum more) {
            return new Sum(path, gainDb + more.gainDb, adjustments + more.adjustments);
        }
    }

    /**
     * What was left of a zero, which has no decibels.
     *
     * @param adjuster its name
     * @param level as read, in the unit of the readings
     */
    public record Zero(String adjuster, double level) {}

    public Gains {
        sums = List.copyOf(sums);
        zeros = List.copyOf(zeros);
    }
}
