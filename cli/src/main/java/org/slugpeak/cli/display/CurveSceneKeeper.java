package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.cli.words.CodeWords;
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

/** Keeps the scene of a response curve up to date. One thread feeds it; any thread may look at the scene. */
final class CurveSceneKeeper implements RecordSink {

    private final RecordSentences sentences = new RecordSentences();
    private final boolean byHand;
    private volatile CurveScene scene = CurveScene.empty();

    /** A scene at the beginning; by hand, or with a generator that sets itself. */
    CurveSceneKeeper(boolean byHand) {
        this.byHand = byHand;
    }

    CurveScene scene() {
        return scene;
    }

    @Override
    public void take(SessionRecord record) {
        scene = record.matchFamily(new Changes());
    }

    /** What each kind of record makes of the scene before it. */
    private final class Changes implements Families<CurveScene>, Frame.Matcher<CurveScene> {

        @Override
        public CurveScene other(SessionRecord it) {
            return scene;
        }

        @Override
        public CurveScene frame(Frame it) {
            return it.match(this);
        }

        @Override
        public CurveScene sessionStart(SessionStart it) {
            return scene.withSession(it.source(), it.measurand().unit());
        }

        @Override
        public CurveScene readingTaken(ReadingTaken it) {
            boolean trusted = it.reading().condition().isTrusted();
            return scene.withReading(trusted ? it.reading().value() : Double.NaN);
        }

        @Override
        public CurveScene sessionEnd(SessionEnd it) {
            return scene;
        }

        @Override
        public CurveScene link(Link it) {
            return it instanceof Link.Changed changed ? changed(changed) : noted(it);
        }

        private CurveScene changed(Link.Changed it) {
            return it.state() == Link.State.RESUMED
                    ? scene.withAlarm(Optional.empty())
                    : scene.withReading(Double.NaN)
                            .withAlarm(Optional.of(ScreenPhrase.METER.of(
                                    CodeWords.of(it.state().code()), it.detail())));
        }

        @Override
        public CurveScene caution(Caution it) {
            return it.match(new Cautions());
        }

        @Override
        public CurveScene finding(Finding it) {
            return it instanceof Finding.Hinted ? noted(it) : scene;
        }

        @Override
        public CurveScene sound(Sound it) {
            return noted(it);
        }

        @Override
        public CurveScene request(Request it) {
            return it.match(new Requests());
        }

        @Override
        public CurveScene guard(Guard it) {
            return noted(it);
        }

        @Override
        public CurveScene work(Work it) {
            return noted(it);
        }

        @Override
        public CurveScene curveWork(CurveWork it) {
            if (it instanceof CurveWork.CurveOver) {
                return scene.asking(sentences.of(it));
            }
            return it instanceof CurveWork.PointTaken point ? scene.withNote(taken(point)) : noted(it);
        }

        private String taken(CurveWork.PointTaken point) {
            return ScreenPhrase.TAKEN.of(kHz(point.hz()), Figures.of(point.level(), point.level(), scene.unit()));
        }
    }

    private CurveScene noted(SessionRecord it) {
        return scene.withNote(sentences.of(it));
    }

    /** What each caution changes. */
    private final class Cautions implements Caution.Matcher<CurveScene> {

        @Override
        public CurveScene overload(Overload it) {
            return scene.withAlarm(Optional.of(ScreenPhrase.OVERLOADED.of(sentences.of(it))));
        }

        @Override
        public CurveScene overloadCleared(OverloadCleared it) {
            return scene.withAlarm(Optional.empty());
        }

        @Override
        public CurveScene weak(Weak it) {
            return scene;
        }

        @Override
        public CurveScene drift(Drift it) {
            return scene;
        }

        @Override
        public CurveScene settled(Caution.Settled it) {
            return noted(it);
        }

        @Override
        public CurveScene suspected(Caution.Suspected it) {
            return noted(it);
        }

        @Override
        public CurveScene noLongerSuspected(Caution.NoLongerSuspected it) {
            return noted(it);
        }

        @Override
        public CurveScene widePeak(Caution.WidePeak it) {
            return noted(it);
        }

        @Override
        public CurveScene restMissing(Caution.RestMissing it) {
            return noted(it);
        }

        @Override
        public CurveScene slowReadings(Caution.SlowReadings it) {
            return noted(it);
        }

        @Override
        public CurveScene checked(Caution.Checked it) {
            return noted(it);
        }
    }

    /** What the user is to do. */
    private final class Requests implements Request.Matcher<CurveScene> {

        @Override
        public CurveScene asked(Request.Asked it) {
            return scene.asking(sentences.of(it));
        }

        @Override
        public CurveScene cutGenerator(Request.CutGenerator it) {
            return noted(it);
        }

        @Override
        public CurveScene generatorChanged(Request.GeneratorChanged it) {
            return noted(it);
        }

        @Override
        public CurveScene generatorUnchanged(Request.GeneratorUnchanged it) {
            return noted(it);
        }

        @Override
        public CurveScene checkOver(Request.CheckOver it) {
            return scene.asking(sentences.of(it));
        }

        @Override
        public CurveScene checkDropped(Request.CheckDropped it) {
            return noted(it);
        }

        @Override
        public CurveScene setUp(Request.SetUp it) {
            return noted(it);
        }

        @Override
        public CurveScene undamp(Request.Undamp it) {
            return noted(it);
        }

        @Override
        public CurveScene turn(Request.Turn it) {
            return noted(it);
        }

        @Override
        public CurveScene handsOff(Request.HandsOff it) {
            return noted(it);
        }

        @Override
        public CurveScene setGenerator(Request.SetGenerator it) {
            String todo = (byHand ? ScreenPhrase.SET : ScreenPhrase.IS_SET).of(kHz(it.hz()));
            return scene.withPoint(ScreenPhrase.POINT_OF.of(it.number(), it.points()), it.hz(), todo);
        }
    }

    static String kHz(double hz) {
        return String.format(Locale.ROOT, "%.2f", hz / 1e3);
    }
}
