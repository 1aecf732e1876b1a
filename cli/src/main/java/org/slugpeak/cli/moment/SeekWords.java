package org.slugpeak.cli.moment;

import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.steps.StepsBack;

/** How a thing that may be sought is spoken of. */
interface SeekWords {

    static SeekWords of(Seek seek) {
        return switch (seek) {
            case PEAK -> new ExtremeWords(CodeWords.of(seek.code()), "", SeekPhrase.BELOW_BEST);
            case DIP ->
                new ExtremeWords(CodeWords.of(seek.code()), SeekPhrase.LESS_IS_NEARER.of(), SeekPhrase.ABOVE_LEAST);
            case ZERO -> new ZeroWords();
        };
    }

    /** Whether there is anything that a reading could be nearer to. */
    boolean compares(Moment moment);

    /** Which readings are nearer, where that does not go without saying. */
    String nearer();

    /** What is said, and kept up to date on the screen, while the reading is past what is sought. */
    String past(double distanceDb);

    String stepsBack(StepsBack back, double dropDb, String unit);

    String returned(double lossDb);

    /** How the level stands, all in all. */
    String facts(Moment moment);

    /** How far the reading is from what is sought, for a line that has nothing else to say it with. */
    String distance(Moment moment);

    /** The best, to follow on the distance; empty where that says it all. */
    String best(Moment moment);
}
