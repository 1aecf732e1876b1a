package org.slugpeak.cli.words;

import org.slugpeak.bridge.sim.Narration;

/** What the operator of a demonstration says. Immutable; any thread may use it. */
public final class DemoNarrator implements Narration.Narrator {

    /** In today's language. */
    public DemoNarrator() {}

    @Override
    public String say(Narration step) {
        return switch (step) {
            case BENCH -> Phrase.SAYS_BENCH.of();
            case REST_FIRST -> Phrase.SAYS_REST_FIRST.of();
            case LEVEL_CHECK -> Phrase.SAYS_LEVEL_CHECK.of();
            case OUTWARDS -> Phrase.SAYS_OUTWARDS.of();
            case FROM_THE_DETECTOR -> Phrase.SAYS_FROM_THE_DETECTOR.of();
            case ITS_BOTTOM_SLUG -> Phrase.SAYS_ITS_BOTTOM_SLUG.of();
            case FIRST_TOP -> Phrase.SAYS_FIRST_TOP.of();
            case FIRST_BOTTOM -> Phrase.SAYS_FIRST_BOTTOM.of();
            case ROUND_TWO -> Phrase.SAYS_ROUND_TWO.of();
            case HANDS_OFF -> Phrase.SAYS_HANDS_OFF.of();
            case SKIRTS -> Phrase.SAYS_SKIRTS.of();
            case DONE -> Phrase.SAYS_DONE.of();
            case TO_THE_AERIAL ->
                Phrase.SAYS_TO_THE_AERIAL.of(SafeHands.at(Phrase.GENERATOR_TO.of(Phrase.AERIAL_SOCKET.of())));
            case LOW_END -> Phrase.SAYS_LOW_END.of();
            case SHORT_WAVE -> Phrase.SAYS_SHORT_WAVE.of();
        };
    }
}
