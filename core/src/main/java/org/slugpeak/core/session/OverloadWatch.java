package org.slugpeak.core.session;

import org.slugpeak.core.reading.Condition;

/** Says once when readings stop being trustworthy for their size, and once when they are good again. */
final class OverloadWatch {

    private final RecordSink sink;
    private Condition present = Condition.OK;

    OverloadWatch(RecordSink sink) {
        this.sink = sink;
    }

    void see(long tNanos, Condition condition) {
        if (condition == present || condition == Condition.NO_VALUE) {
            return;
        }
        present = condition;
        switch (condition) {
            case OVER_RANGE ->
                sink.take(new Overload(
                        tNanos, Overload.Cause.OVER_RANGE, "turn the generator down, or choose a higher range"));
            case FULL_SCALE ->
                sink.take(new Overload(
                        tNanos, Overload.Cause.FULL_SCALE, "turn the generator down, or divide the voltage"));
            case CLIPPING ->
                sink.take(new Overload(tNanos, Overload.Cause.CLIPPING, "turn the generator or the input level down"));
            default -> sink.take(new OverloadCleared(tNanos));
        }
    }
}
