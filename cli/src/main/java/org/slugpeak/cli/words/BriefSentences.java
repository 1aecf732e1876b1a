package org.slugpeak.cli.words;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Request;

/**
 * What the person is asked to do, in a few letters. Where a hand goes to a terminal, what comes first is all that is said; what asks
 * for nothing has no short form. Immutable.
 */
public final class BriefSentences implements Request.Matcher<String> {

    /** The short forms in today's language. */
    public BriefSentences() {}

    @Override
    public String asked(Request.Asked it) {
        CheckKind check = it.check();
        boolean restores = it.move() == check.moves();
        return (restores ? restoring(check) : it.move() == 0 ? first(check) : second(check)).of();
    }

    private static BriefPhrase first(CheckKind check) {
        return switch (check) {
            case REST -> BriefPhrase.GENERATOR_OFF;
            case LEVEL -> BriefPhrase.HALVE;
            case LOADING -> BriefPhrase.SET_OFF;
            case EFFECT -> BriefPhrase.HALF_TURN_IN;
            case SKIRTS, HARMONIC -> BriefPhrase.TUNE_UP;
            case OTHER_IF -> BriefPhrase.TUNE_DOWN;
            case IMAGE -> BriefPhrase.DIAL_TO_IMAGE;
            case DETECTOR_LAW -> BriefPhrase.STEP_DOWN;
        };
    }

    private static BriefPhrase second(CheckKind check) {
        return switch (check) {
            case LEVEL -> BriefPhrase.HALVE_AGAIN;
            case SKIRTS, HARMONIC -> BriefPhrase.TUNE_DOWN;
            case OTHER_IF -> BriefPhrase.TUNE_UP;
            case REST, LOADING, EFFECT, IMAGE, DETECTOR_LAW -> first(check);
        };
    }

    private static BriefPhrase restoring(CheckKind check) {
        return switch (check) {
            case REST -> BriefPhrase.GENERATOR_ON;
            case LEVEL -> BriefPhrase.GENERATOR_UP;
            case LOADING -> BriefPhrase.SET_OFF;
            case EFFECT -> BriefPhrase.HALF_TURN_BACK;
            case SKIRTS, OTHER_IF, HARMONIC -> BriefPhrase.TUNE_BACK;
            case IMAGE -> BriefPhrase.DIAL_BACK;
            case DETECTOR_LAW -> BriefPhrase.STEPS_UP;
        };
    }

    @Override
    public String cutGenerator(Request.CutGenerator it) {
        return (RequestSentences.isToAQuarter(it) ? BriefPhrase.QUARTER : BriefPhrase.HALVE).of();
    }

    @Override
    public String generatorChanged(Request.GeneratorChanged it) {
        return "";
    }

    @Override
    public String generatorUnchanged(Request.GeneratorUnchanged it) {
        return "";
    }

    @Override
    public String checkOver(Request.CheckOver it) {
        return "";
    }

    @Override
    public String checkDropped(Request.CheckDropped it) {
        return "";
    }

    @Override
    public String setUp(Request.SetUp it) {
        return (it.what().isAtTerminals() ? BriefPhrase.SET_OFF : BriefPhrase.SET_UP).of();
    }

    @Override
    public String undamp(Request.Undamp it) {
        return BriefPhrase.SET_OFF.of();
    }

    @Override
    public String turn(Request.Turn it) {
        return BriefPhrase.TURN.of();
    }

    @Override
    public String handsOff(Request.HandsOff it) {
        return BriefPhrase.HANDS_OFF.of();
    }

    @Override
    public String setGenerator(Request.SetGenerator it) {
        return it.mark()
                .map(mark -> BriefPhrase.MARK.of(mark.hz() / 1e3))
                .orElseGet(() -> BriefPhrase.FREQUENCY.of(Frequencies.plain(it.hz())));
    }

    @Override
    public String setInput(Request.SetInput it) {
        return it.mark()
                .map(mark -> BriefPhrase.MARK.of(mark.hz() / 1e3))
                .orElseGet(() ->
                        BriefPhrase.FREQUENCY.of(Frequencies.plain(it.setting().frequencyHz())));
    }

    @Override
    public String generatorStands(Request.GeneratorStands it) {
        return BriefPhrase.FREQUENCY.of(Frequencies.plain(it.hz()));
    }

    @Override
    public String generatorFails(Request.GeneratorFails it) {
        return BriefPhrase.GENERATOR_FAILS.of();
    }
}
