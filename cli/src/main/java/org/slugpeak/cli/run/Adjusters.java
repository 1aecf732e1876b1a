package org.slugpeak.cli.run;

import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;

/** Numbers the adjusters of a session without a plan. One thread. */
final class Adjusters {

    private final Analysis analysis;
    private int number;

    Adjusters(Analysis analysis) {
        this.analysis = analysis;
    }

    void next(Adjuster.Action endOfThisOne) {
        analysis.adjusterEnded(endOfThisOne);
        number++;
        begin();
    }

    void again() {
        begin();
    }

    private void begin() {
        analysis.nextAdjuster("adjuster " + number);
    }
}
