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
            case OVER_RANGE, FULL_SCALE, CLIPPING -> listener.overload(tNanos, condition);
            case OK, NO_VALUE -> listener.cleared(tNanos);
        }
    }
}
