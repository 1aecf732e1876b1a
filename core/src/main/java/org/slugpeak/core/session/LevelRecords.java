package org.slugpeak.core.session;

import org.slugpeak.core.level.LevelListener;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.word.Coded;

/** Writes what the level watch says as session records. */
final class LevelRecords implements LevelListener {

    private final RecordSink sink;

    LevelRecords(RecordSink sink) {
        this.sink = sink;
    }

    @Override
    public void overload(long tNanos, Condition condition, String advice) {
        sink.take(new Overload(
                tNanos, Coded.find(Overload.Cause.class, condition.code()).orElseThrow(), advice));
    }

    @Override
    public void flattening(long tNanos, String advice) {
        sink.take(new Overload(tNanos, Overload.Cause.FLATTENING, advice));
    }

    @Override
    public void cleared(long tNanos) {
        sink.take(new OverloadCleared(tNanos));
    }

    @Override
    public void weak(long tNanos, double snrDb, String advice) {
        sink.take(new Weak(tNanos, snrDb, advice));
    }

    @Override
    public void drift(long tNanos, double dbPerMinute) {
        sink.take(new Drift(tNanos, dbPerMinute, "dB"));
    }

    @Override
    public void advice(long tNanos, String topic, String text, double amount) {
        sink.take(new Advice(tNanos, topic, text, amount));
    }
}
