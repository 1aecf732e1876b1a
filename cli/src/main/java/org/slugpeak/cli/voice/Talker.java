package org.slugpeak.cli.voice;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.words.VoicePhrase;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Manner;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Decides what is spoken: words for the hand at once, everything else in a sentence when no tone is being listened to. One thread at a
 * time.
 */
final class Talker implements RecordSink {

    private final Speech mouth;
    private final boolean withTone;
    private final boolean withKeys;
    private final MomentKeeper keeper = new MomentKeeper();
    private Optional<String> waiting = Optional.empty();
    private String told = "";
    private long toldNanos = -1;
    private long called;
    private long saidTenths = -1;

    /**
     * A talker of one session.
     *
     * @param mouth speaks
     * @param withTone whether the reading is also heard as a tone, which is not to be talked over
     * @param withKeys whether somebody has to say when leads are where they belong: the key for it is told
     */
    Talker(Speech mouth, boolean withTone, boolean withKeys) {
        this.mouth = mouth;
        this.withKeys = withKeys;
        this.withTone = withTone;
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
        Moment moment = keeper.moment();
        boolean isCalled = moment.called().filter(it -> it.number() > called).isPresent();
        called = moment.called().map(it -> it.number()).orElse(0L);
        Optional<String> word = isCalled ? word(moment) : Optional.empty();
        if (word.isPresent()) {
            waiting = Optional.empty();
            mouth.word(Pronunciation.of(word.get()));
        } else if (record instanceof ReadingTaken) {
            reading(moment);
        } else if (isCalled || !(record instanceof Finding || record instanceof SessionEnd)) {
            keeper.said().ifPresent(said -> say(record, said));
        }
        speakWhatWaits(moment);
    }

    /**
     * What is asked is not cut off by a remark, and what came of the work not by what follows in the same moment: it is told before that. What
     * says how a hand goes to a terminal is spoken to its end, whatever is asked meanwhile.
     */
    private void say(SessionRecord record, String said) {
        boolean isRemark = record.manner() == Manner.NOTES && !(record instanceof CurveWork);
        boolean isPoint = record instanceof CurveWork.PointTaken;
        if (!isPoint && isRemark && keeper.moment().toDo().isPresent()) {
            return;
        }
        boolean follows = record.tNanos() == toldNanos && !(record instanceof Said.Answer) && !isPoint;
        String whole = follows ? told + said : said;
        if (record instanceof Request.SetUp || record instanceof Request.Undamp) {
            mouth.word(Pronunciation.of(withKeys ? VoicePhrase.THEN_NEXT.of(whole) : whole));
        } else if (!isPoint) {
            waiting = Optional.of(whole);
        }
        if (isPoint || isTold(record)) {
            told = whole + ". ";
            toldNanos = record.tNanos();
        }
    }

    /** Of the answers the last tells how adjusters are turned. */
    private static boolean isTold(SessionRecord record) {
        boolean ends = record instanceof Adjuster adjuster && adjuster.action() != Adjuster.Action.BEGIN;
        return ends || record instanceof Work.RoundEnded || record instanceof Said.Answer;
    }

    /** What the hand must hear at once; empty where a sentence says it. */
    private Optional<String> word(Moment moment) {
        Act act = moment.act();
        Call call = moment.called().orElseThrow().call();
        saidTenths = -1;
        if (act == Act.BACK && call == Call.BACK) {
            saidTenths = tenths(moment);
            return Optional.of(Pronunciation.back(moment.level().distanceDb()));
        }
        boolean isOfTheHand = act == Act.STOP || act == Act.HELD || act == Act.OTHER_WAY || act == Act.NO_PEAK;
        if (isOfTheHand && act.call().equals(Optional.of(call)) && keeper.said().isPresent()) {
            return Optional.of(
                    act == Act.NO_PEAK
                            ? MomentWords.sentence(moment)
                            : act.word().toLowerCase(Locale.ROOT));
        }
        boolean alarm = call == Call.OVERLOAD || call == Call.NO_LINK;
        return alarm ? Optional.of(MomentWords.alarm(moment).toLowerCase(Locale.ROOT)) : Optional.empty();
    }

    /** On the way back the tenths are counted down where no tone tells of them. */
    private void reading(Moment moment) {
        if (moment.act() != Act.BACK || withTone || saidTenths < 0) {
            return;
        }
        long tenths = tenths(moment);
        if (tenths < saidTenths) {
            saidTenths = tenths;
            mouth.sentence(Pronunciation.back(moment.level().distanceDb()));
        }
    }

    private static long tenths(Moment moment) {
        return Math.round(moment.level().distanceDb() * 10);
    }

    private void speakWhatWaits(Moment moment) {
        boolean tone = withTone && isListenedTo(moment);
        if (tone) {
            mouth.dropSentence();
        } else {
            waiting.ifPresent(sentence -> mouth.sentence(Pronunciation.of(sentence)));
            waiting = Optional.empty();
        }
    }

    /** A tone is listened to while somebody turns. */
    private static boolean isListenedTo(Moment moment) {
        return switch (moment.act()) {
            case TURN, OTHER_WAY, BACK, STOP -> moment.level().trend() != Trend.STEADY;
            case WAIT, HELD, TWO_PEAKS, NO_PEAK, HANDS_OFF, DO, OVERLOAD, NO_LINK, END -> false;
        };
    }
}
