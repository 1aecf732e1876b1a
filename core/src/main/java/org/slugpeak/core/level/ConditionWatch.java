package org.slugpeak.core.level;

import org.slugpeak.core.reading.Condition;

/** Says once when readings stop being trustworthy for their size, and once when they are good again. */
final class ConditionWatch {

    private final LevelListener listener;
    private Condition present = Condition.OK;

    ConditionWatch(LevelListener listener) {
        this.listener = listener;
    }

    void see(long tNanos, Condition condition) {
        if (condition == present || condition == Condition.NO_VALUE) {
            return;
        }
        present = condition;
        switch (condition) {
            case OVER_RANGE ->
                listener.overload(tNanos, condition, "turn the generator down, or choose a higher range");
            case FULL_SCALE -> listener.overload(tNanos, condition, "turn the generator down, or divide the voltage");
            case CLIPPING -> listener.overload(tNanos, condition, "turn the generator or the input level down");
            default -> listener.cleared(tNanos);
        }
    }
}
