package org.slugpeak.cli.moment;

import org.slugpeak.cli.words.BriefSentences;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Request;

/**
 * What the user is asked to do with his hands now, to be read across the bench before anything else. Immutable; any thread may
 * use it.
 *
 * @param tNanos when it was asked, nanoseconds from the first reading
 * @param stays how long it is shown
 * @param brief in two or three short words, as they are written large
 * @param text in full, one line
 */
public record ToDo(long tNanos, Stays stays, String brief, String text) {

    /** How long something is shown that was asked for. */
    public enum Stays {
        /** A record tells that it was done, or is no longer wanted. */
        UNTIL_ANSWERED(Act.DO),
        /** The work goes on when the person says so. */
        UNTIL_SET_UP(Act.DO),
        /** The reading tells by itself whether it was done. */
        FOR_A_WHILE(Act.DO),
        /** It is done as soon as somebody turns. */
        UNTIL_TURNED(Act.TURN),
        /** A record tells that the hand has gone. */
        UNTIL_LET_GO(Act.HANDS_OFF),
        /** The reading of a curve is taken by itself, or when the person says so. */
        UNTIL_TAKEN(Act.DO),
        /** A generator is set from here: there is nothing to do but wait. */
        WHILE_SET(Act.WAIT),
        /** A generator that is set from here does as it is told again. */
        UNTIL_STANDS(Act.DO);

        private final Act act;

        Stays(Act act) {
            this.act = act;
        }
    }

    /** Nobody reads a line in less, even if the hand is moving already. */
    private static final long READ_NANOS = 2_000_000_000L;

    private static final long WHILE_NANOS = 8_000_000_000L;

    static ToDo of(Request it, String text) {
        return new ToDo(it.tNanos(), it.match(new Staying()), it.match(new BriefSentences()), text);
    }

    /** A point of a response curve. */
    static ToDo ofPoint(Request.SetGenerator it) {
        Stays stays = it.byHand() ? Stays.UNTIL_TAKEN : Stays.WHILE_SET;
        return new ToDo(it.tNanos(), stays, it.match(new BriefSentences()), pointText(it));
    }

    private static String pointText(Request.SetGenerator it) {
        String kHz = Frequencies.kHz(it.hz());
        if (!it.byHand()) {
            return ScreenPhrase.IS_SET.of(kHz);
        }
        return it.mark()
                .map(mark -> ScreenPhrase.SET_MARK.of(mark.hz() / 1e3, mark.combinedHz() / 1e3, kHz))
                .orElseGet(() -> ScreenPhrase.SET.of(kHz));
    }

    /**
     * Whether the short form can stand for it however long it is, since the rest only says why.
     *
     * @return true of what the reading shows to be done; false where a hand may have to go to a terminal
     */
    public boolean maySayLittle() {
        return stays == Stays.FOR_A_WHILE;
    }

    /**
     * Whether the short form says what matters, and is to be large rather than all of it.
     *
     * @return true of a frequency
     */
    public boolean leadsWithBrief() {
        return stays == Stays.UNTIL_TAKEN || stays == Stays.WHILE_SET;
    }

    /**
     * What that is for the hand.
     *
     * @return one of those that need no finder
     */
    public Act act() {
        return stays.act;
    }

    /** Whether it outlasts what the finder says after it. */
    boolean outlastsVerdicts() {
        return stays != Stays.FOR_A_WHILE && stays != Stays.UNTIL_TURNED;
    }

    /** Whether it is still asked when a generator has said how it stands. */
    boolean outlastsGenerator() {
        return stays != Stays.UNTIL_STANDS;
    }

    /** Whether it is still to be shown when a reading comes. */
    boolean stands(long nowNanos, Trend trend) {
        long age = nowNanos - tNanos;
        return switch (stays) {
            case FOR_A_WHILE -> age < WHILE_NANOS;
            case UNTIL_TURNED -> age < READ_NANOS || trend == Trend.STEADY;
            case UNTIL_ANSWERED, UNTIL_SET_UP, UNTIL_LET_GO, UNTIL_TAKEN, WHILE_SET, UNTIL_STANDS -> true;
        };
    }

    /** How long each request stays. */
    private static final class Staying implements Request.Matcher<Stays> {

        @Override
        public Stays asked(Request.Asked it) {
            return Stays.UNTIL_ANSWERED;
        }

        @Override
        public Stays cutGenerator(Request.CutGenerator it) {
            return Stays.FOR_A_WHILE;
        }

        @Override
        public Stays generatorChanged(Request.GeneratorChanged it) {
            return Stays.UNTIL_ANSWERED;
        }

        @Override
        public Stays generatorUnchanged(Request.GeneratorUnchanged it) {
            return Stays.UNTIL_ANSWERED;
        }

        @Override
        public Stays checkOver(Request.CheckOver it) {
            return Stays.UNTIL_ANSWERED;
        }

        @Override
        public Stays checkDropped(Request.CheckDropped it) {
            return Stays.UNTIL_ANSWERED;
        }

        @Override
        public Stays setUp(Request.SetUp it) {
            return Stays.UNTIL_SET_UP;
        }

        @Override
        public Stays undamp(Request.Undamp it) {
            return Stays.UNTIL_SET_UP;
        }

        @Override
        public Stays turn(Request.Turn it) {
            return Stays.UNTIL_TURNED;
        }

        @Override
        public Stays handsOff(Request.HandsOff it) {
            return Stays.UNTIL_LET_GO;
        }

        @Override
        public Stays setGenerator(Request.SetGenerator it) {
            return Stays.UNTIL_TAKEN;
        }

        @Override
        public Stays setInput(Request.SetInput it) {
            return Stays.UNTIL_SET_UP;
        }

        @Override
        public Stays generatorStands(Request.GeneratorStands it) {
            return Stays.FOR_A_WHILE;
        }

        @Override
        public Stays generatorFails(Request.GeneratorFails it) {
            return it.gone() ? Stays.UNTIL_STANDS : Stays.FOR_A_WHILE;
        }
    }
}
