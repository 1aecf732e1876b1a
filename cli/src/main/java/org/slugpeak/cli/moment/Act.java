package org.slugpeak.cli.moment;

import java.util.Optional;
import org.slugpeak.cli.words.ScreenPhrase;

/**
 * The one thing that the hand is to do now. Each has a word to be read from across the bench, a sign of its own on every display, and
 * what calls for it, if anything does. Immutable; any thread may use it.
 */
public enum Act {
    /** Nothing yet: no reading has come. */
    WAIT(ScreenPhrase.WAIT),
    /** Go on turning, slowly. */
    TURN(ScreenPhrase.TURN),
    /** It falls: turn the other way. */
    OTHER_WAY(ScreenPhrase.OTHER_WAY, Call.LOOK),
    /** Past it: turn back. */
    BACK(ScreenPhrase.BACK, Call.BACK),
    /** On it: stop turning. */
    STOP(ScreenPhrase.STOP, Call.STOP),
    /** It is recorded: go on to the next adjuster. */
    HELD(ScreenPhrase.HELD, Call.HELD),
    /** A person must judge which of two is right. */
    TWO_PEAKS(ScreenPhrase.TWO_PEAKS, Call.LOOK),
    /** There was none; the sentence says why. */
    NO_PEAK(ScreenPhrase.NO_PEAK, Call.LOOK),
    /** Take the hand away from what is turned. */
    HANDS_OFF(ScreenPhrase.HANDS_OFF),
    /** Do what is asked, with generator, dial or leads; the word is the brief form of what is asked. */
    DO(ScreenPhrase.DO, Call.LOOK),
    /** The reading cannot be trusted: less signal. */
    OVERLOAD(ScreenPhrase.OVERLOAD, Call.OVERLOAD),
    /** The instrument has gone, or is silent. */
    NO_LINK(ScreenPhrase.NO_LINK, Call.NO_LINK),
    /** The session is over. */
    END(ScreenPhrase.END);

    private final ScreenPhrase word;
    private final Optional<Call> call;

    Act(ScreenPhrase word) {
        this.word = word;
        this.call = Optional.empty();
    }

    Act(ScreenPhrase word, Call call) {
        this.word = word;
        this.call = Optional.of(call);
    }

    /**
     * The short form.
     *
     * @return in capitals, one or two words of today's language
     */
    public String word() {
        return word.of();
    }

    /**
     * What calls for it when it begins.
     *
     * @return empty where it follows what was heard already
     */
    public Optional<Call> call() {
        return call;
    }

    /** Whether a better reading than ever makes it out of date. */
    boolean isOverAtNewBest() {
        return this == WAIT || this == OTHER_WAY || this == NO_PEAK;
    }

    /** Whether it stands before whatever the finder last said. */
    boolean comesFirst() {
        return this == DO || this == OVERLOAD || this == NO_LINK;
    }
}
