package org.slugpeak.cli.run;

import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionRecord;

/** Without a plan, adjusters have numbers. Who says when the next one is begun is told apart by three makers. One thread. */
public final class NumberedAdjusters implements Guide {

    private final boolean begins;
    private final boolean goesOn;
    private final AutoAdvance advance = new AutoAdvance();
    private int number;

    private NumberedAdjusters(boolean begins, boolean goesOn) {
        this.begins = begins;
        this.goesOn = goesOn;
    }

    /**
     * The source says which adjuster is at hand: a recorded session, or a demonstration.
     *
     * @return a guide for one session
     */
    public static NumberedAdjusters toldBySource() {
        return new NumberedAdjusters(false, false);
    }

    /**
     * The user's keys say it.
     *
     * @return a guide for one session
     */
    public static NumberedAdjusters byKey() {
        return new NumberedAdjusters(true, false);
    }

    /**
     * The user's keys say it, and so does turning again after an adjuster was held.
     *
     * @return a guide for one session
     */
    public static NumberedAdjusters byDwell() {
        return new NumberedAdjusters(true, true);
    }

    @Override
    public void begin(Analysis analysis) {
        if (begins) {
            next(analysis);
        }
    }

    @Override
    public void take(SessionRecord record) {
        if (goesOn) {
            advance.take(record);
        }
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        if (goesOn && advance.isDue()) {
            next(analysis);
        }
    }

    @Override
    public void next(Analysis analysis) {
        goOn(analysis, Adjuster.Action.DONE);
    }

    @Override
    public void skip(Analysis analysis) {
        goOn(analysis, Adjuster.Action.SKIP);
    }

    @Override
    public void again(Analysis analysis) {
        analysis.nextAdjuster(name());
    }

    private void goOn(Analysis analysis, Adjuster.Action endOfThisOne) {
        analysis.adjusterEnded(endOfThisOne);
        number++;
        analysis.nextAdjuster(name());
    }

    private String name() {
        return AskPhrase.ADJUSTER.of(number);
    }
}
