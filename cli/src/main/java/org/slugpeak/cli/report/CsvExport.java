package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Work;

/**
 * Every reading of the sessions, one a line (RFC 4180), with its decibels above one unit as if the generator had stood still since the
 * resting reading; where there is none, as in logs of {@code slugpeak sheet}, whose readings are behind its figures, every figure, and as
 * in logs of {@code slugpeak scale}, every dial error.
 * Lines are written as records come, so that a session may be of any length. A text that a spreadsheet would take for a formula is
 * preceded by an apostrophe. One thread at a time.
 */
public final class CsvExport implements RecordSink {

    /** What files with readings begin with, those of earlier versions too. */
    static final String READINGS = "seconds,value,smoothed,best,condition,adjuster,session";

    private static final String UNITS = ",unit,constantGenerator,constantGeneratorUnit\n";

    /** What files with dial errors begin with. */
    static final String DIALS = "signalHz,dialErrorHz,when,session\n";

    private final Writer out;
    private final Writing writing = new Writing();
    private final StringBuilder dials = new StringBuilder();
    private final FigureLines figures = new FigureLines();
    private boolean begun;
    private boolean ofSheet;
    private String session = "";
    private String adjuster = "";
    private String unit = "";
    private ConstantGenerator scale = new ConstantGenerator("", false);

    /**
     * Writes to a stream.
     *
     * @param out should be buffered; not closed
     */
    public CsvExport(Writer out) {
        this.out = out;
    }

    /**
     * The records that follow are of another session.
     *
     * @param name of its log
     * @param start its first record
     */
    public void session(String name, SessionStart start) {
        session = quoted(name);
        adjuster = "";
        ofSheet = false;
        unit = start.measurand().unit();
        scale = new ConstantGenerator(unit, start.settings().seek().signCounts());
    }

    /**
     * Writes what the record says.
     *
     * @param record of the session begun last
     * @throws UncheckedIOException where it cannot be written
     */
    @Override
    public void take(SessionRecord record) {
        record.tellFamily(scale);
        record.tellFamily(writing);
    }

    /** What is exported. */
    private final class Writing implements FamilyListener {

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken && !ofSheet) {
                reading(taken);
            }
        }

        @Override
        public void sheetWork(SheetWork it) {
            if (it instanceof SheetWork.Begun begins) {
                ofSheet = true;
                figures.begin(begins);
            } else if (it instanceof SheetWork.FigureTaken taken) {
                figures.add(taken.figure(), session);
            }
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster change) {
                adjuster = change.action() == Adjuster.Action.BEGIN ? quoted(change.name()) : "";
            } else if (it instanceof Work.DialNoted noted) {
                dial(noted);
            }
        }
    }

    /**
     * Writes what is left, after the last session.
     *
     * @throws UncheckedIOException where it cannot be written
     */
    public void end() {
        if (!begun) {
            String withoutFigures = dials.isEmpty() ? READINGS + UNITS : DIALS + dials;
            write(figures.hasFigures() ? figures.text() : withoutFigures);
        }
    }

    private void reading(ReadingTaken it) {
        if (!begun) {
            begun = true;
            write(READINGS + UNITS);
        }
        boolean hasValue = it.reading().condition().hasValue();
        write(it.tNanos() / 1e9
                + "," + (hasValue ? number(it.reading().value()) : "")
                + "," + number(it.smoothed())
                + "," + number(it.best())
                + "," + it.reading().condition().code()
                + "," + adjuster
                + "," + session
                + "," + quoted(unit)
                + (hasValue ? scaled(scale.of(it.reading().value())) : ",,") + "\n");
    }

    private String scaled(ScaledLevel level) {
        return "," + number(level.value()) + "," + (level.inUnit() ? quoted(unit) : "dB");
    }

    private void dial(Work.DialNoted point) {
        figures.add(point, session);
        dials.append(number(point.signalHz()))
                .append(',')
                .append(number(point.errorHz()))
                .append(point.after() ? ",after," : ",before,")
                .append(session)
                .append('\n');
    }

    private void write(String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Empty for what is no number. */
    static String number(double value) {
        return Double.isFinite(value) ? Double.toString(value) : "";
    }

    /** A text as one field that no spreadsheet takes for a formula. */
    static String quoted(String text) {
        String safe = SafeText.line(text);
        String plain = safe.matches("[=+\\-@].*") ? "'" + safe : safe;
        return plain.matches("[^\",]*") ? plain : '"' + plain.replace("\"", "\"\"") + '"';
    }
}
