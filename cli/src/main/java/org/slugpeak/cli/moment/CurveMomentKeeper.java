package org.slugpeak.cli.moment;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.DetailWords;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/** Keeps the moment of a response curve up to date. One thread feeds it; any thread may look at the moment. */
public final class CurveMomentKeeper implements RecordSink {

    private final RecordSentences sentences = new RecordSentences();
    private final boolean byHand;
    private volatile CurveMoment moment = CurveMoment.empty();

    /**
     * Before the session.
     *
     * @param byHand whether a person sets the generator
     */
    public CurveMomentKeeper(boolean byHand) {
        this.byHand = byHand;
    }

    /**
     * As it is now.
     *
     * @return after the last record
     */
    public CurveMoment moment() {
        return moment;
    }

    @Override
    public void take(SessionRecord record) {
        moment = record.matchFamily(new Changes());
    }

    /** What each kind of record makes of the moment before it. */
    private final class Changes implements Families<CurveMoment>, Frame.Matcher<CurveMoment> {

        @Override
        public CurveMoment other(SessionRecord it) {
            return moment;
        }

        @Override
        public CurveMoment frame(Frame it) {
            return it.match(this);
        }

        @Override
        public CurveMoment sessionStart(SessionStart it) {
            return moment.withSession(it.source(), it.measurand().unit());
        }

        @Override
        public CurveMoment readingTaken(ReadingTaken it) {
            boolean trusted = it.reading().condition().isTrusted();
            return moment.withReading(trusted ? it.reading().value() : Double.NaN);
        }

        @Override
        public CurveMoment sessionEnd(SessionEnd it) {
            return moment;
        }

        @Override
        public CurveMoment link(Link it) {
            return it instanceof Link.Changed changed ? changed(changed) : noted(it);
        }

        private CurveMoment changed(Link.Changed it) {
            return it.state() == Link.State.RESUMED
                    ? moment.withAlarm(Optional.empty())
                    : moment.withReading(Double.NaN)
                            .withAlarm(Optional.of(ScreenPhrase.METER.of(
                                    CodeWords.of(it.state().code()), DetailWords.of(it.detail()))));
        }

        @Override
        public CurveMoment caution(Caution it) {
            return it.match(new Cautions());
        }

        @Override
        public CurveMoment finding(Finding it) {
            return it instanceof Finding.Hinted ? noted(it) : moment;
        }

        @Override
        public CurveMoment sound(Sound it) {
            return noted(it);
        }

        @Override
        public CurveMoment request(Request it) {
            return it.match(new Requests());
        }

        @Override
        public CurveMoment guard(Guard it) {
            return noted(it);
        }

        @Override
        public CurveMoment work(Work it) {
            return noted(it);
        }

        @Override
        public CurveMoment curveWork(CurveWork it) {
            if (it instanceof CurveWork.CurveOver) {
                return moment.asking(sentences.of(it));
            }
            return it instanceof CurveWork.PointTaken point ? moment.withNote(taken(point)) : noted(it);
        }

        private String taken(CurveWork.PointTaken point) {
            return ScreenPhrase.TAKEN.of(kHz(point.hz()), Figures.of(point.level(), point.level(), moment.unit()));
        }
    }

    private CurveMoment noted(SessionRecord it) {
        return moment.withNote(sentences.of(it));
    }

    /** What each caution changes. */
    private final class Cautions implements Caution.Matcher<CurveMoment> {

        @Override
        public CurveMoment overload(Overload it) {
            return moment.withAlarm(Optional.of(ScreenPhrase.OVERLOADED.of(sentences.of(it))));
        }

        @Override
        public CurveMoment overloadCleared(OverloadCleared it) {
            return moment.withAlarm(Optional.empty());
        }

        @Override
        public CurveMoment weak(Weak it) {
            return moment;
        }

        @Override
        public CurveMoment drift(Drift it) {
            return moment;
        }

        @Override
        public CurveMoment settled(Caution.Settled it) {
            return noted(it);
        }

        @Override
        public CurveMoment suspected(Caution.Suspected it) {
            return noted(it);
        }

        @Override
        public CurveMoment noLongerSuspected(Caution.NoLongerSuspected it) {
            return noted(it);
        }

        @Override
        public CurveMoment widePeak(Caution.WidePeak it) {
            return noted(it);
        }

        @Override
        public CurveMoment restMissing(Caution.RestMissing it) {
            return noted(it);
        }

        @Override
        public CurveMoment slowReadings(Caution.SlowReadings it) {
            return noted(it);
        }

        @Override
        public CurveMoment checked(Caution.Checked it) {
            return noted(it);
        }
    }

    /** What the user is to do. */
    private final class Requests implements Request.Matcher<CurveMoment> {

        @Override
        public CurveMoment asked(Request.Asked it) {
            return moment.asking(sentences.of(it));
        }

        @Override
        public CurveMoment cutGenerator(Request.CutGenerator it) {
            return noted(it);
        }

        @Override
        public CurveMoment generatorChanged(Request.GeneratorChanged it) {
            return noted(it);
        }

        @Override
        public CurveMoment generatorUnchanged(Request.GeneratorUnchanged it) {
            return noted(it);
        }

        @Override
        public CurveMoment checkOver(Request.CheckOver it) {
            return moment.asking(sentences.of(it));
        }

        @Override
        public CurveMoment checkDropped(Request.CheckDropped it) {
            return noted(it);
        }

        @Override
        public CurveMoment setUp(Request.SetUp it) {
            return noted(it);
        }

        @Override
        public CurveMoment undamp(Request.Undamp it) {
            return noted(it);
        }

        @Override
        public CurveMoment turn(Request.Turn it) {
            return noted(it);
        }

        @Override
        public CurveMoment handsOff(Request.HandsOff it) {
            return noted(it);
        }

        @Override
        public CurveMoment setGenerator(Request.SetGenerator it) {
            String todo = (byHand ? ScreenPhrase.SET : ScreenPhrase.IS_SET).of(kHz(it.hz()));
            return moment.withPoint(ScreenPhrase.POINT_OF.of(it.number(), it.points()), it.hz(), todo);
        }

        @Override
        public CurveMoment generatorStands(Request.GeneratorStands it) {
            String todo = ScreenPhrase.IS_SET.of(kHz(it.hz()));
            return moment.asks() ? moment.withPoint(moment.point(), it.hz(), todo) : moment;
        }

        @Override
        public CurveMoment generatorFails(Request.GeneratorFails it) {
            return moment.asking(it.detail());
        }
    }

    /**
     * A frequency of a curve.
     *
     * @param hz of the generator, Hz
     * @return in kHz, without the unit
     */
    public static String kHz(double hz) {
        return String.format(Locale.ROOT, "%.2f", hz / 1e3);
    }
}
