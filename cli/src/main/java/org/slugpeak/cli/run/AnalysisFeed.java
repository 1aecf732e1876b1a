package org.slugpeak.cli.run;

import java.util.function.Consumer;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;

/** Carries what a source delivers into the analysis, and counts what was no reading. One thread. */
final class AnalysisFeed extends AnalysisListener {

    private static final int TOLD_ONE_BY_ONE = 5;

    private final Runnable beginning;
    private final Runnable afterReading;
    private final Consumer<TypedWord> typed;
    private boolean begun;
    private int garbled;

    /**
     * A feed that opens the session when the first thing comes: only then does every source know what it measures.
     *
     * @param analysis gets everything
     * @param beginning opens the session
     * @param afterReading is run when a reading has been dealt with
     * @param typed is given what was typed in place of a value
     */
    AnalysisFeed(Analysis analysis, Runnable beginning, Runnable afterReading, Consumer<TypedWord> typed) {
        super(analysis);
        this.beginning = beginning;
        this.afterReading = afterReading;
        this.typed = typed;
    }

    /** Opens the session where that has not happened yet. */
    void begin() {
        if (!begun) {
            begun = true;
            beginning.run();
        }
    }

    @Override
    protected Analysis analysis() {
        begin();
        return super.analysis();
    }

    @Override
    public void reading(Reading reading) {
        super.reading(reading);
        afterReading.run();
    }

    @Override
    public void typed(TypedWord word) {
        begin();
        typed.accept(word);
    }

    @Override
    public void garbled(String where, String problem) {
        garbled++;
        if (garbled <= TOLD_ONE_BY_ONE) {
            int count = garbled;
            analysis().tell(at -> new Link.NotAReading(at, where, problem, count));
        }
    }

    /** Says how many lines were no readings, where that was not said for each. */
    void summarise() {
        if (garbled > TOLD_ONE_BY_ONE) {
            analysis().tell(at -> new Link.LeftOut(at, garbled));
        }
    }
}
