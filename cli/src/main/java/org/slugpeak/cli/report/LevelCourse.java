package org.slugpeak.cli.report;

import java.util.List;

/**
 * The course of levels that can be compared with each other: one scale of {@link ConstantGenerator}. Immutable; any thread may use it.
 *
 * @param scale its number, from 0
 * @param inUnit whether levels are in the unit of the readings, as around a zero, rather than in dB
 * @param beginNanos when its first level or adjuster came
 * @param found the level as it was found, before the first adjuster; NaN where none was turned
 * @param stretches of time, ascending
 */
record LevelCourse(int scale, boolean inUnit, long beginNanos, double found, List<Trace.Stretch> stretches) {

    LevelCourse {
        stretches = List.copyOf(stretches);
    }

    boolean wasTurned() {
        return !Double.isNaN(found);
    }

    boolean isWorthDrawing() {
        return stretches.size() > 1 && (inUnit || highest() > ConstantGenerator.NOTHING_DB);
    }

    long endNanos() {
        return stretches.isEmpty()
                ? beginNanos
                : stretches.get(stretches.size() - 1).tNanos();
    }

    double highest() {
        return stretches.stream().mapToDouble(Trace.Stretch::most).max().orElse(Double.NaN);
    }

    double lowest() {
        return stretches.stream().mapToDouble(Trace.Stretch::least).min().orElse(Double.NaN);
    }

    /** What counts as nothing gained: the level as it was found; without one the highest, and around a zero the zero. */
    double zero() {
        return inUnit ? 0 : wasTurned() ? found : highest();
    }
}
