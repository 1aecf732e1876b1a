package org.slugpeak.cli.report;

import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Work;

/** Figures of receivers' sheets as lines of text, with dial errors among them. One thread at a time. */
final class FigureLines {

    /** What files with figures begin with. */
    static final String FIGURES = "figure,dialHz,when,value,unit,sigma,sigmaUnit,limit,outcome,session\n";

    private final StringBuilder lines = new StringBuilder();
    private String when = "";
    private boolean measured;

    void begin(SheetWork.Begun it) {
        when = it.conditions().occasion().code();
    }

    void add(Figure it, String session) {
        measured = true;
        line(
                it.kind().code(),
                it.dialHz(),
                when,
                it.value(),
                unit(it.kind()),
                it.sigma(),
                sigmaUnit(it.kind()),
                it.limit().code(),
                it.outcome().code(),
                session);
    }

    private static String unit(FigureKind kind) {
        return switch (kind.counts()) {
            case VOLTS_EMF -> "V EMF";
            case DECIBELS -> "dB";
            case HERTZ -> "Hz";
            case RATIO -> "1";
        };
    }

    private static String sigmaUnit(FigureKind kind) {
        return kind.counts() == FigureKind.Counts.VOLTS_EMF ? "dB" : unit(kind);
    }

    void add(Work.DialNoted it, String session) {
        Occasion occasion = it.after() ? Occasion.AFTER : Occasion.BEFORE;
        String measuredCode = Figure.Outcome.MEASURED.code();
        line(
                "dial-error",
                it.signalHz(),
                occasion.code(),
                it.errorHz(),
                "Hz",
                Double.NaN,
                "Hz",
                "",
                measuredCode,
                session);
    }

    private void line(
            String figure,
            double dialHz,
            String occasion,
            double value,
            String unit,
            double sigma,
            String sigmaUnit,
            String limit,
            String outcome,
            String session) {
        lines.append(String.join(
                        ",",
                        figure,
                        CsvExport.number(dialHz),
                        occasion,
                        CsvExport.number(value),
                        unit,
                        CsvExport.number(sigma),
                        sigmaUnit,
                        limit,
                        outcome,
                        session))
                .append('\n');
    }

    /** Whether a sheet has brought any. */
    boolean hasFigures() {
        return measured;
    }

    String text() {
        return FIGURES + lines;
    }
}
