package org.slugpeak.bridge.log;

import java.io.OutputStream;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.steps.StepsBack;

/** Writes each record as the line that the record format says, into memory. One thread at a time. */
final class RecordWriter implements SessionRecord.Matcher<LineWriter> {

    private final LineWriter line;

    /** A writer into memory: the stream must not throw. */
    RecordWriter(OutputStream memory) {
        this.line = new LineWriter(memory);
    }

    /** Writes one line, its newline included. */
    void write(SessionRecord record) {
        record.match(this).end();
    }

    @Override
    public LineWriter sessionStart(SessionStart it) {
        line.begin(JsonFields.TYPE_SESSION)
                .count(JsonFields.VERSION, it.version())
                .text(JsonFields.STARTED_AT, it.startedAt().toString())
                .text(JsonFields.SOURCE, it.source())
                .text(JsonFields.QUANTITY, it.measurand().quantity())
                .text(JsonFields.UNIT, it.measurand().unit())
                .text(JsonFields.SEEK, it.settings().seek().code())
                .time(JsonFields.DWELL, it.settings().dwell().toNanos())
                .text(JsonFields.TOOL, it.tool());
        return it.stepped() ? line.flag(JsonFields.STEPPED) : line;
    }

    @Override
    public LineWriter passed(Passed it) {
        line.begin(JsonFields.TYPE_PASSED, it.tNanos())
                .number(JsonFields.BEST, it.best())
                .time(JsonFields.BEST_AT, it.bestAtNanos())
                .number(JsonFields.DROP_DB, it.dropDb());
        it.back().ifPresent(this::stepsBack);
        return line;
    }

    private void stepsBack(StepsBack back) {
        line.number(JsonFields.STEPS_BACK, back.steps())
                .number(JsonFields.STEPS_ERROR, back.stepsError())
                .number(JsonFields.TOP, back.top())
                .number(JsonFields.TOP_ERROR, back.topError());
    }

    @Override
    public LineWriter returned(Returned it) {
        return line.begin(JsonFields.TYPE_RETURNED, it.tNanos())
                .number(JsonFields.VALUE, it.value())
                .number(JsonFields.LOSS_DB, it.lossDb());
    }

    @Override
    public LineWriter held(Held it) {
        return line.begin(JsonFields.TYPE_HELD, it.tNanos())
                .number(JsonFields.VALUE, it.value())
                .number(JsonFields.LOSS_DB, it.lossDb());
    }

    @Override
    public LineWriter twoPeaks(TwoPeaks it) {
        return line.begin(JsonFields.TYPE_TWO_PEAKS, it.tNanos())
                .number(JsonFields.FIRST, it.first())
                .number(JsonFields.SECOND, it.second())
                .number(JsonFields.DIP_DB, it.dipDb());
    }

    @Override
    public LineWriter noPeak(NoPeak it) {
        return line.begin(JsonFields.TYPE_NO_PEAK, it.tNanos())
                .text(JsonFields.REASON, it.reason().code());
    }

    @Override
    public LineWriter overload(Overload it) {
        return line.begin(JsonFields.TYPE_OVERLOAD, it.tNanos())
                .text(JsonFields.CAUSE, it.cause().code())
                .text(JsonFields.ADVICE, it.advice());
    }

    @Override
    public LineWriter overloadCleared(OverloadCleared it) {
        return line.begin(JsonFields.TYPE_OVERLOAD_CLEARED, it.tNanos());
    }

    @Override
    public LineWriter weak(Weak it) {
        return line.begin(JsonFields.TYPE_WEAK, it.tNanos())
                .number(JsonFields.SNR_DB, it.snrDb())
                .text(JsonFields.ADVICE, it.advice());
    }

    @Override
    public LineWriter drift(Drift it) {
        return line.begin(JsonFields.TYPE_DRIFT, it.tNanos())
                .number(JsonFields.PER_MINUTE, it.perMinute())
                .text(JsonFields.UNIT, it.unit());
    }

    @Override
    public LineWriter link(Link it) {
        return line.begin(JsonFields.TYPE_LINK, it.tNanos())
                .text(JsonFields.STATE, it.state().code())
                .text(JsonFields.DETAIL, it.detail());
    }

    @Override
    public LineWriter mark(Mark it) {
        return line.begin(JsonFields.TYPE_MARK, it.tNanos()).text(JsonFields.TEXT, it.text());
    }

    @Override
    public LineWriter adjuster(Adjuster it) {
        return line.begin(JsonFields.TYPE_ADJUSTER, it.tNanos())
                .text(JsonFields.NAME, it.name())
                .text(JsonFields.ACTION, it.action().code())
                .number(JsonFields.BEFORE, it.before())
                .number(JsonFields.AFTER, it.after())
                .number(JsonFields.GAIN_DB, it.gainDb());
    }

    @Override
    public LineWriter advice(Advice it) {
        return line.begin(JsonFields.TYPE_ADVICE, it.tNanos())
                .text(JsonFields.TOPIC, it.topic())
                .text(JsonFields.TEXT, it.text())
                .number(JsonFields.AMOUNT, it.amount());
    }

    @Override
    public LineWriter readingTaken(ReadingTaken it) {
        return line.reading(it);
    }

    @Override
    public LineWriter sessionEnd(SessionEnd it) {
        return line.begin(JsonFields.TYPE_END, it.tNanos())
                .count(JsonFields.READINGS, it.readings())
                .text(JsonFields.REASON, it.reason());
    }
}
