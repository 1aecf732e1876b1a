package org.slugpeak.cli.curve;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Weak;

/** Which records concern whoever measures a response curve: those of nothing that is turned. Immutable. */
final class CurveConcerns
        implements Families<Boolean>, Caution.Matcher<Boolean>, Request.Matcher<Boolean>, Link.Matcher<Boolean> {

    @Override
    public Boolean other(SessionRecord it) {
        return false;
    }

    @Override
    public Boolean frame(Frame it) {
        return true;
    }

    @Override
    public Boolean said(Said it) {
        return !(it instanceof Said.Answer);
    }

    @Override
    public Boolean caution(Caution it) {
        return it.match(this);
    }

    @Override
    public Boolean request(Request it) {
        return it.match(this);
    }

    @Override
    public Boolean curveWork(CurveWork it) {
        return true;
    }

    @Override
    public Boolean link(Link it) {
        return it.match(this);
    }

    @Override
    public Boolean overload(Overload it) {
        return true;
    }

    @Override
    public Boolean overloadCleared(OverloadCleared it) {
        return true;
    }

    @Override
    public Boolean weak(Weak it) {
        return false;
    }

    @Override
    public Boolean drift(Drift it) {
        return false;
    }

    @Override
    public Boolean settled(Caution.Settled it) {
        return false;
    }

    @Override
    public Boolean suspected(Caution.Suspected it) {
        return false;
    }

    @Override
    public Boolean noLongerSuspected(Caution.NoLongerSuspected it) {
        return false;
    }

    @Override
    public Boolean widePeak(Caution.WidePeak it) {
        return false;
    }

    @Override
    public Boolean restMissing(Caution.RestMissing it) {
        return false;
    }

    @Override
    public Boolean slowReadings(Caution.SlowReadings it) {
        return false;
    }

    @Override
    public Boolean windowMissed(Caution.WindowMissed it) {
        return false;
    }

    @Override
    public Boolean checked(Caution.Checked it) {
        return it.check() == CheckKind.REST || it.check() == CheckKind.DETECTOR_LAW;
    }

    @Override
    public Boolean asked(Request.Asked it) {
        return true;
    }

    @Override
    public Boolean cutGenerator(Request.CutGenerator it) {
        return false;
    }

    @Override
    public Boolean generatorChanged(Request.GeneratorChanged it) {
        return false;
    }

    @Override
    public Boolean generatorUnchanged(Request.GeneratorUnchanged it) {
        return false;
    }

    @Override
    public Boolean checkOver(Request.CheckOver it) {
        return true;
    }

    @Override
    public Boolean checkDropped(Request.CheckDropped it) {
        return true;
    }

    @Override
    public Boolean setUp(Request.SetUp it) {
        return false;
    }

    @Override
    public Boolean undamp(Request.Undamp it) {
        return false;
    }

    @Override
    public Boolean turn(Request.Turn it) {
        return false;
    }

    @Override
    public Boolean handsOff(Request.HandsOff it) {
        return false;
    }

    @Override
    public Boolean setGenerator(Request.SetGenerator it) {
        return true;
    }

    @Override
    public Boolean setInput(Request.SetInput it) {
        return false;
    }

    @Override
    public Boolean generatorStands(Request.GeneratorStands it) {
        return true;
    }

    @Override
    public Boolean generatorFails(Request.GeneratorFails it) {
        return true;
    }

    @Override
    public Boolean changed(Link.Changed it) {
        return true;
    }

    @Override
    public Boolean broken(Link.Broken it) {
        return it.notice() == LinkNotice.RANGE_CHANGED;
    }

    @Override
    public Boolean notAReading(Link.NotAReading it) {
        return true;
    }

    @Override
    public Boolean leftOut(Link.LeftOut it) {
        return true;
    }

    @Override
    public Boolean lowBattery(Link.LowBattery it) {
        return false;
    }

    @Override
    public Boolean unitTold(Link.UnitTold it) {
        return false;
    }

    @Override
    public Boolean logGap(Link.LogGap it) {
        return false;
    }
}
