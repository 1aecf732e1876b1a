package org.slugpeak.bridge.log;

import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Work;

/** The part of the writer for what the work brings: requests, rounds, curves, the link, what is heard. One thread at a time. */
abstract class CourseWriter
        implements Families<LineWriter>,
                Request.Matcher<LineWriter>,
                Guard.Matcher<LineWriter>,
                Work.Matcher<LineWriter>,
                CurveWork.Matcher<LineWriter>,
                SheetWork.Matcher<LineWriter>,
                Link.Matcher<LineWriter>,
                Sound.Matcher<LineWriter> {

    final LineWriter line;
    final RecordForms forms;
    final AdviceTopics topics;

    CourseWriter(LineWriter line, RecordForms forms, AdviceTopics topics) {
        this.line = line;
        this.forms = forms;
        this.topics = topics;
    }

    final <T extends SessionRecord> LineWriter advise(AdviceTopic<T> topic, T it) {
        return forms.advice.write(line, topic.line(it));
    }

    /** Of a {@link Logged}, too: its words are beside it where it was read, and it is written nowhere. */
    @Override
    public LineWriter other(SessionRecord it) {
        throw new IllegalStateException("no form for " + it);
    }

    @Override
    public LineWriter request(Request it) {
        return it.match(this);
    }

    @Override
    public LineWriter guard(Guard it) {
        return it.match(this);
    }

    @Override
    public LineWriter work(Work it) {
        return it.match(this);
    }

    @Override
    public LineWriter curveWork(CurveWork it) {
        return it.match(this);
    }

    @Override
    public LineWriter sheetWork(SheetWork it) {
        return it.match(this);
    }

    @Override
    public LineWriter link(Link it) {
        return it.match(this);
    }

    @Override
    public LineWriter sound(Sound it) {
        return it.match(this);
    }

    @Override
    public LineWriter asked(Request.Asked it) {
        return advise(topics.asked, it);
    }

    @Override
    public LineWriter cutGenerator(Request.CutGenerator it) {
        return advise(topics.cutGenerator, it);
    }

    @Override
    public LineWriter generatorChanged(Request.GeneratorChanged it) {
        return advise(topics.generatorChanged, it);
    }

    @Override
    public LineWriter generatorUnchanged(Request.GeneratorUnchanged it) {
        return advise(topics.generatorUnchanged, it);
    }

    @Override
    public LineWriter checkOver(Request.CheckOver it) {
        return advise(topics.checkOver, it);
    }

    @Override
    public LineWriter checkDropped(Request.CheckDropped it) {
        return advise(topics.checkDropped, it);
    }

    @Override
    public LineWriter setUp(Request.SetUp it) {
        return advise(it.what().setup().isPresent() ? topics.setUp : topics.damping, it);
    }

    @Override
    public LineWriter undamp(Request.Undamp it) {
        return advise(topics.undamp, it);
    }

    @Override
    public LineWriter turn(Request.Turn it) {
        return advise(topics.turn, it);
    }

    @Override
    public LineWriter handsOff(Request.HandsOff it) {
        return advise(topics.handsOff, it);
    }

    @Override
    public LineWriter setGenerator(Request.SetGenerator it) {
        return advise(topics.setGenerator, it);
    }

    @Override
    public LineWriter setInput(Request.SetInput it) {
        return advise(topics.setInput, it);
    }

    @Override
    public LineWriter generatorStands(Request.GeneratorStands it) {
        return advise(topics.generatorStands, it);
    }

    @Override
    public LineWriter generatorFails(Request.GeneratorFails it) {
        return advise(it.gone() ? topics.generatorGone : topics.generatorFails, it);
    }

    @Override
    public LineWriter stillShort(Guard.StillShort it) {
        return advise(topics.stillShort, it);
    }

    @Override
    public LineWriter begunAgain(Guard.BegunAgain it) {
        return advise(topics.begunAgain, it);
    }

    @Override
    public LineWriter twoMaxima(Guard.TwoMaxima it) {
        return advise(topics.twoMaxima, it);
    }

    @Override
    public LineWriter choice(Guard.Choice it) {
        return advise(topics.choice, it);
    }

    @Override
    public LineWriter endOfTravel(Guard.EndOfTravel it) {
        return advise(topics.endOfTravel, it);
    }

    @Override
    public LineWriter lateGain(Guard.LateGain it) {
        return advise(topics.lateGain, it);
    }

    @Override
    public LineWriter clampGainControl(Guard.ClampGainControl it) {
        return advise(topics.clampGainControl, it);
    }

    @Override
    public LineWriter adjuster(Adjuster it) {
        return forms.adjuster.write(line, it);
    }

    @Override
    public LineWriter planBegun(Work.PlanBegun it) {
        return advise(topics.planBegun, it);
    }

    @Override
    public LineWriter pathBegun(Work.PathBegun it) {
        return advise(topics.pathBegun, it);
    }

    @Override
    public LineWriter handEffect(Work.HandEffect it) {
        return advise(topics.handEffect, it);
    }

    @Override
    public LineWriter swept(Work.Swept it) {
        return advise(topics.swept, it);
    }

    @Override
    public LineWriter roundEnded(Work.RoundEnded it) {
        return advise(topics.roundEnded, it);
    }

    @Override
    public LineWriter wentBack(Work.WentBack it) {
        return advise(topics.wentBack, it);
    }

    @Override
    public LineWriter planOver(Work.PlanOver it) {
        return advise(topics.planOver, it);
    }

    @Override
    public LineWriter dialNoted(Work.DialNoted it) {
        return advise(it.after() ? topics.dialAfter : topics.dialBefore, it);
    }

    @Override
    public LineWriter nothingToTakeBack(Work.NothingToTakeBack it) {
        return advise(topics.nothingToTakeBack, it);
    }

    @Override
    public LineWriter pointTaken(CurveWork.PointTaken it) {
        return advise(topics.pointTaken, it);
    }

    @Override
    public LineWriter pointLeftOut(CurveWork.PointLeftOut it) {
        return advise(topics.pointLeftOut, it);
    }

    @Override
    public LineWriter lawStep(CurveWork.LawStep it) {
        return advise(topics.lawStep, it);
    }

    @Override
    public LineWriter curveOver(CurveWork.CurveOver it) {
        return advise(topics.curveOver, it);
    }

    @Override
    public LineWriter begun(SheetWork.Begun it) {
        return forms.sheet.write(line, it);
    }

    @Override
    public LineWriter outputTaken(SheetWork.OutputTaken it) {
        return forms.output.write(line, it);
    }

    @Override
    public LineWriter figureTaken(SheetWork.FigureTaken it) {
        return forms.figure.write(line, it);
    }

    @Override
    public LineWriter sheetOver(SheetWork.SheetOver it) {
        return advise(topics.sheetOver, it);
    }

    @Override
    public LineWriter changed(Link.Changed it) {
        return forms.link.write(line, it);
    }

    @Override
    public LineWriter broken(Link.Broken it) {
        return advise(AdviceTopics.of(topics.notices, it.notice()), it);
    }

    @Override
    public LineWriter notAReading(Link.NotAReading it) {
        return advise(topics.notAReading, it);
    }

    @Override
    public LineWriter leftOut(Link.LeftOut it) {
        return advise(topics.leftOut, it);
    }

    @Override
    public LineWriter lowBattery(Link.LowBattery it) {
        return advise(topics.lowBattery, it);
    }

    @Override
    public LineWriter unitTold(Link.UnitTold it) {
        return advise(topics.unitTold, it);
    }

    @Override
    public LineWriter logGap(Link.LogGap it) {
        return advise(topics.logGap, it);
    }

    @Override
    public LineWriter tone(Sound.Tone it) {
        return advise(topics.tone, it);
    }

    @Override
    public LineWriter noTone(Sound.NoTone it) {
        return advise(topics.noTone, it);
    }

    @Override
    public LineWriter perhapsHum(Sound.PerhapsHum it) {
        return advise(topics.perhapsHum, it);
    }

    @Override
    public LineWriter humUnderTone(Sound.HumUnderTone it) {
        return advise(topics.humUnderTone, it);
    }

    @Override
    public LineWriter purity(Sound.Purity it) {
        return advise(topics.purity, it);
    }

    @Override
    public LineWriter distorted(Sound.Distorted it) {
        return advise(topics.distorted, it);
    }

    @Override
    public LineWriter outputReached(Sound.OutputReached it) {
        return advise(topics.outputReached, it);
    }

    @Override
    public LineWriter clips(Sound.Clips it) {
        return advise(topics.clips, it);
    }
}
