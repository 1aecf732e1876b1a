package org.slugpeak.cli.words;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Request;

/** What the checks of the trade ask for. All methods are pure. */
final class CheckWords {

    private CheckWords() {}

    /** A move, from 0; as many as the check has moves: put things back. */
    static String move(Request.Asked it) {
        CheckKind check = it.check();
        if (it.move() == check.moves()) {
            return restore(check);
        }
        String skirt = Frequencies.plain(it.skirtHz());
        String job = check == CheckKind.DETECTOR_LAW
                ? Phrase.LAW_STEP_DOWN.of(CheckKind.LAW_STEP_DB, it.move() + 1, check.moves())
                : it.move() == 0 ? first(it, skirt) : second(check, skirt);
        return check.seesStep() ? job : Phrase.THEN_SAY_DONE.of(job);
    }

    private static String first(Request.Asked it, String skirt) {
        return switch (it.check()) {
            case REST -> Phrase.GENERATOR_OFF.of();
            case LEVEL -> Phrase.HALVE.of();
            case LOADING -> SafeHands.at(Phrase.RESISTOR_IN.of());
            case EFFECT -> Phrase.ADJUSTER_IN.of();
            case SKIRTS -> Phrase.UP_TO_SKIRT.of(skirt);
            case OTHER_IF -> Phrase.DOWN_10_KHZ.of();
            case HARMONIC -> Phrase.UP_2_KHZ.of();
            case IMAGE ->
                Double.isNaN(it.imageDialHz())
                        ? Phrase.DIAL_TO_IMAGE.of()
                        : Phrase.DIAL_TO_IMAGE_AT.of(Frequencies.plain(it.imageDialHz()));
            case DETECTOR_LAW -> throw new IllegalArgumentException(it.check() + " has equal moves");
        };
    }

    private static String second(CheckKind check, String skirt) {
        return switch (check) {
            case LEVEL -> Phrase.HALVE_AGAIN.of();
            case SKIRTS -> Phrase.DOWN_TO_SKIRT.of(skirt);
            case OTHER_IF -> Phrase.UP_10_KHZ.of();
            case HARMONIC -> Phrase.DOWN_2_KHZ.of();
            case REST, LOADING, EFFECT, IMAGE, DETECTOR_LAW ->
                throw new IllegalArgumentException(check + " has no second move of its own");
        };
    }

    private static String restore(CheckKind check) {
        return switch (check) {
            case REST -> Phrase.GENERATOR_ON.of();
            case LEVEL -> Phrase.GENERATOR_UP.of();
            case LOADING -> SafeHands.at(Phrase.RESISTOR_OUT.of());
            case EFFECT -> Phrase.ADJUSTER_BACK.of();
            case SKIRTS, OTHER_IF, HARMONIC -> Phrase.BACK_ON_FREQUENCY.of();
            case IMAGE -> Phrase.DIAL_BACK.of();
            case DETECTOR_LAW -> Phrase.LAW_STEPS_UP.of(check.moves() * CheckKind.LAW_STEP_DB);
        };
    }
}
