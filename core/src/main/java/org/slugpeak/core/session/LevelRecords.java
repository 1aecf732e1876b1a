package org.slugpeak.core.session;

import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelListener;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.word.Coded;

/** Writes what the level watch finds as session records. */
final class LevelRecords implements LevelListener {

    private final RecordSink sink;

    LevelRecords(RecordSink sink) {
        this.sink = sink;
    }

    @Override
    public void overload(long tNanos, Condition condition) {
        sink.take(new Overload(
                tNanos, Coded.find(Overload.Cause.class, condition.code()).orElseThrow(), Double.NaN));
    }

    @Override
    public void flattening(long tNanos, double slope) {
        sink.take(new Overload(tNanos, Overload.Cause.FLATTENING, slope));
    }

    @Override
    public void cleared(long tNanos) {
        sink.take(new OverloadCleared(tNanos));
    }

    @Override
    public void weak(long tNanos, double snrDb) {
        sink.take(new Weak(tNanos, snrDb));
    }

    @Override
    public void drift(long tNanos, double dbPerMinute) {
        sink.take(new Drift(tNanos, dbPerMinute, "dB"));
    }

    @Override
    public void settled(long tNanos, double dbPerMinute) {
        sink.take(new Caution.Settled(tNanos, dbPerMinute));
    }

    @Override
    public void suspected(long tNanos, Suspicion suspicion, double amount) {
        sink.take(new Caution.Suspected(tNanos, suspicion, amount));
    }

    @Override
    public void noLongerSuspected(long tNanos, Suspicion suspicion) {
        sink.take(new Caution.NoLongerSuspected(tNanos, suspicion));
    }

    @Override
    public void widePeak(long tNanos, double times) {
        sink.take(new Caution.WidePeak(tNanos, times));
    }

    @Override
    public void restMissing(long tNanos) {
        sink.take(new Caution.RestMissing(tNanos));
    }

    @Override
    public void asked(long tNanos, CheckKind check, int move, double skirtHz, double imageDialHz) {
        sink.take(new Request.Asked(tNanos, check, move, skirtHz, imageDialHz));
    }

    @Override
    public void checked(long tNanos, CheckKind check, CheckFigures figures) {
        sink.take(new Caution.Checked(tNanos, check, figures));
    }

    @Override
    public void lawStep(long tNanos, double generatorDb, double level) {
        sink.take(new CurveWork.LawStep(tNanos, generatorDb, level));
    }

    @Override
    public void checkOver(long tNanos) {
        sink.take(new Request.CheckOver(tNanos));
    }

    @Override
    public void checkDropped(long tNanos, double waitedSeconds) {
        sink.take(new Request.CheckDropped(tNanos, waitedSeconds));
    }

    @Override
    public void cutGenerator(long tNanos, double factor, double toReading) {
        sink.take(new Request.CutGenerator(tNanos, factor, toReading));
    }

    @Override
    public void generatorChanged(long tNanos, double changeDb) {
        sink.take(new Request.GeneratorChanged(tNanos, changeDb));
    }

    @Override
    public void generatorUnchanged(long tNanos) {
        sink.take(new Request.GeneratorUnchanged(tNanos));
    }
}
