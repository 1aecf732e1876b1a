package org.slugpeak.cli.words;

import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Request;

/** What the person is asked to do. Immutable. */
final class RequestSentences implements Request.Matcher<String> {

    /** Less than this is a cut to a quarter. */
    private static final double HALF = 0.5;

    @Override
    public String asked(Request.Asked it) {
        return CheckWords.move(it);
    }

    @Override
    public String cutGenerator(Request.CutGenerator it) {
        if (it.factor() > 1) {
            return Phrase.RAISE_TO_READING.of(it.toReading());
        }
        String cut = (isToAQuarter(it) ? Phrase.CUT_TO_A_QUARTER : Phrase.CUT_TO_A_HALF).of();
        return Double.isNaN(it.toReading()) ? cut : Phrase.CUT_TO_READING.of(cut, it.toReading());
    }

    static boolean isToAQuarter(Request.CutGenerator it) {
        return it.factor() < HALF;
    }

    @Override
    public String generatorChanged(Request.GeneratorChanged it) {
        return Phrase.GENERATOR_CHANGED.of(Rounded.to(it.changeDb(), 1));
    }

    @Override
    public String generatorUnchanged(Request.GeneratorUnchanged it) {
        return Phrase.GENERATOR_UNCHANGED.of();
    }

    @Override
    public String checkOver(Request.CheckOver it) {
        return Phrase.CHECK_OVER.of();
    }

    @Override
    public String checkDropped(Request.CheckDropped it) {
        return Phrase.CHECK_DROPPED.of((int) it.waitedSeconds());
    }

    @Override
    public String setUp(Request.SetUp it) {
        return PlanWords.prepare(it.what());
    }

    @Override
    public String undamp(Request.Undamp it) {
        return SafeHands.at(PlanWords.undamp(it.damping()));
    }

    @Override
    public String turn(Request.Turn it) {
        return TurnWords.turn(it.step());
    }

    @Override
    public String handsOff(Request.HandsOff it) {
        return (it.rocking() ? Phrase.GREATEST_SWEEP : Phrase.HANDS_OFF).of();
    }

    @Override
    public String setGenerator(Request.SetGenerator it) {
        String kHz = Frequencies.kHz(it.hz());
        return it.mark()
                .map(mark -> Phrase.SET_GENERATOR_MARK.of(kHz, PlanWords.mark(mark), it.number(), it.points()))
                .orElseGet(() -> Phrase.SET_GENERATOR.of(kHz, it.number(), it.points()));
    }

    @Override
    public String setInput(Request.SetInput it) {
        String setting = SheetWords.setting(it.setting(), it.mark());
        return it.unasked() ? setting : SheetPhrase.THEN.of(setting);
    }

    @Override
    public String generatorStands(Request.GeneratorStands it) {
        if (it.emfVolts() == 0) {
            return Phrase.GENERATOR_STANDS_OFF.of();
        }
        String at = Phrase.GENERATOR_STANDS_AT.of(Frequencies.plain(it.hz()));
        return Double.isNaN(it.emfVolts())
                ? at
                : Phrase.GENERATOR_STANDS_LEVEL.of(at, LevelUnit.MICROVOLTS_EMF.ofEmfVolts(it.emfVolts()));
    }

    @Override
    public String generatorFails(Request.GeneratorFails it) {
        return it.detail();
    }
}
