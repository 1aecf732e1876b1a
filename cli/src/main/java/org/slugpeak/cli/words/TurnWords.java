package org.slugpeak.cli.words;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

/** What an adjuster is turned for, in words. All methods are pure. */
final class TurnWords {

    private TurnWords() {}

    static String turn(PlanStep step) {
        String how = step.rock() ? rocking(step) : standing(step);
        List<String> more = new ArrayList<>(proof(step));
        more.addAll(step.notes());
        return more.isEmpty()
                ? Phrase.TURN.of(step.adjuster(), how)
                : Phrase.TURN_NOTES.of(step.adjuster(), how, String.join("; ", more));
    }

    private static String standing(PlanStep step) {
        return switch (step.goal()) {
            case PEAK -> Phrase.TO_MAXIMUM.of();
            case DIP -> Phrase.TO_MINIMUM.of();
            case ZERO -> Phrase.TO_ZERO.of();
            case ON_DIAL -> Phrase.TO_MAXIMUM_ON_MARK.of();
            case ZERO_BEAT -> Phrase.TO_ZERO_BEAT.of();
            case CRYSTAL ->
                Phrase.TO_CRYSTAL.of(
                        Frequencies.plain(step.setup().generatorHz().orElse(Double.NaN)));
        };
    }

    /** While the gang is rocked the pointer cannot stay where it is: the greatest sweep counts, wherever it is met. */
    private static String rocking(PlanStep step) {
        boolean slugs = step.setup().particulars().band().map(Band::tuning).orElse(TuningElement.CAPACITOR)
                == TuningElement.PERMEABILITY;
        if (step.goal().isOnMark()) {
            return (slugs ? Phrase.ROCK_SLUGS_NEAR_MARK : Phrase.ROCK_NEAR_MARK).of();
        }
        return (slugs ? Phrase.ROCK_SLUGS : Phrase.ROCK).of();
    }

    /** Which of two settings is right, and where the other shows; a slug further out is less inductance, as less capacitance is. */
    private static List<String> proof(PlanStep step) {
        if (!step.provesImage()) {
            return List.of();
        }
        List<String> proof = new ArrayList<>();
        step.oscillator().ifPresent(side -> proof.add(side(side)));
        step.imageDialHz().ifPresent(hz -> proof.add(Phrase.IMAGE_AT.of(Frequencies.plain(hz))));
        return proof;
    }

    private static String side(OscillatorSide side) {
        return switch (side) {
            case ABOVE -> Phrase.SIDE_ABOVE.of();
            case BELOW -> Phrase.SIDE_BELOW.of();
        };
    }
}
