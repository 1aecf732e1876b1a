package org.slugpeak.bridge.log;

import java.io.OutputStream;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

/**
 * Writes each record as the line that its form says, into memory: which form that is stands here, and in {@link CourseWriter}. One
 * thread at a time.
 */
final class RecordWriter extends CourseWriter
        implements Frame.Matcher<LineWriter>,
                Finding.Matcher<LineWriter>,
                Caution.Matcher<LineWriter>,
                Said.Matcher<LineWriter> {

    /** A writer into memory: the stream must not throw. */
    RecordWriter(OutputStream memory, Sentences sentences) {
        super(new LineWriter(memory), new RecordForms(sentences), new AdviceTopics(sentences));
    }

    /** Writes one line, its newline included. */
    void write(SessionRecord record) {
        record.matchFamily(this).end();
    }

    @Override
    public LineWriter frame(Frame it) {
        return it.match(this);
    }

    @Override
    public LineWriter finding(Finding it) {
        return it.match(this);
    }

    @Override
    public LineWriter caution(Caution it) {
        return it.match(this);
    }

    @Override
    public LineWriter said(Said it) {
        return it.match(this);
    }

    @Override
    public LineWriter sessionStart(SessionStart it) {
        return forms.start.write(line, it);
    }

    @Override
    public LineWriter readingTaken(ReadingTaken it) {
        return line.reading(it);
    }

    @Override
    public LineWriter sessionEnd(SessionEnd it) {
        return forms.end.write(line, it);
    }

    @Override
    public LineWriter passed(Passed it) {
        return forms.passed.write(line, it);
    }

    @Override
    public LineWriter returned(Returned it) {
        return forms.returned.write(line, it);
    }

    @Override
    public LineWriter held(Held it) {
        return forms.held.write(line, it);
    }

    @Override
    public LineWriter twoPeaks(TwoPeaks it) {
        return forms.twoPeaks.write(line, it);
    }

    @Override
    public LineWriter noPeak(NoPeak it) {
        return forms.noPeak.write(line, it);
    }

    @Override
    public LineWriter hinted(Finding.Hinted it) {
        return advise(AdviceTopics.of(topics.hints, it.hint()), it);
    }

    @Override
    public LineWriter furtherPast(Finding.FurtherPast it) {
        return advise(topics.furtherPast, it);
    }

    @Override
    public LineWriter overload(Overload it) {
        return forms.overload.write(line, it);
    }

    @Override
    public LineWriter overloadCleared(OverloadCleared it) {
        return forms.overloadCleared.write(line, it);
    }

    @Override
    public LineWriter weak(Weak it) {
        return forms.weak.write(line, it);
    }

    @Override
    public LineWriter drift(Drift it) {
        return forms.drift.write(line, it);
    }

    @Override
    public LineWriter settled(Caution.Settled it) {
        return advise(topics.settled, it);
    }

    @Override
    public LineWriter suspected(Caution.Suspected it) {
        return advise(AdviceTopics.of(topics.suspicions, it.suspicion()), it);
    }

    @Override
    public LineWriter noLongerSuspected(Caution.NoLongerSuspected it) {
        return advise(topics.noLongerSuspected, it);
    }

    @Override
    public LineWriter widePeak(Caution.WidePeak it) {
        return advise(topics.widePeak, it);
    }

    @Override
    public LineWriter restMissing(Caution.RestMissing it) {
        return advise(topics.restMissing, it);
    }

    @Override
    public LineWriter slowReadings(Caution.SlowReadings it) {
        return advise(topics.slowReadings, it);
    }

    @Override
    public LineWriter windowMissed(Caution.WindowMissed it) {
        return advise(topics.windowMissed, it);
    }

    @Override
    public LineWriter checked(Caution.Checked it) {
        return advise(AdviceTopics.of(topics.checks, it.check()), it);
    }

    @Override
    public LineWriter note(Said.Note it) {
        return forms.mark.write(line, MarkLine.of(it));
    }

    @Override
    public LineWriter command(Said.Command it) {
        return forms.mark.write(line, MarkLine.of(it));
    }

    @Override
    public LineWriter answer(Said.Answer it) {
        return advise(topics.answer, it);
    }

    @Override
    public LineWriter counted(Said.Counted it) {
        return advise(it.taken() ? topics.countedPoint : topics.counted, it);
    }
}
