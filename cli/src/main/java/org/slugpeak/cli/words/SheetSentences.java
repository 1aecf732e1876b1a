package org.slugpeak.cli.words;

import org.slugpeak.core.session.SheetWork;

/** What comes of a receiver's sheet. Immutable. */
final class SheetSentences implements SheetWork.Matcher<String> {

    @Override
    public String begun(SheetWork.Begun it) {
        return SheetPhrase.BEGUN.of(
                SheetWords.occasion(it.conditions().occasion()), SheetWords.conditions(it.conditions()));
    }

    @Override
    public String outputTaken(SheetWork.OutputTaken it) {
        double volts = it.output().volts();
        return Double.isInfinite(volts) ? SheetPhrase.TOO_MUCH.of() : SheetPhrase.READS.of(volts);
    }

    @Override
    public String figureTaken(SheetWork.FigureTaken it) {
        return SheetWords.figure(it.figure());
    }

    @Override
    public String sheetOver(SheetWork.SheetOver it) {
        return SheetPhrase.OVER.of();
    }
}
