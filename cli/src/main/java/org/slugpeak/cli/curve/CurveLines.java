package org.slugpeak.cli.curve;

import java.io.PrintStream;
import java.util.Locale;
import java.util.Set;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** Says in lines what to set and what was read. One thread: the session's. */
final class CurveLines implements RecordSink {

    private static final Set<String> SAID = Set.of("ask", "rest", "no-signal", "curve-over");

    private final PrintStream error;
    private final String unit;

    CurveLines(PrintStream error, String unit) {
        this.error = error;
        this.unit = unit;
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Advice advice) {
            advice(advice);
        } else if (record instanceof Link link) {
            error.println("link " + link.state().code() + (link.detail().isEmpty() ? "" : ": " + link.detail()));
        } else if (record instanceof Overload overload) {
            error.println("OVERLOAD: " + overload.advice());
        }
    }

    private void advice(Advice it) {
        switch (it.topic()) {
            case CurveRecords.SET -> error.println(it.text());
            case CurveRecords.POINT -> {
                double hz = Double.parseDouble(it.text());
                error.println(
                        String.format(Locale.ROOT, "    %s kHz reads %.4g %s", CurveText.kHz(hz), it.amount(), unit));
            }
            case "check-dropped" ->
                error.println(it.text() + "; without the resting reading the decibels are doubtful");
            default -> {
                if (SAID.contains(it.topic())) {
                    error.println(it.text());
                }
            }
        }
    }
}
