package org.slugpeak.cli.sheet;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Work;

/** Which records concern whoever fills a sheet: nothing is turned to a peak, and the level is meant to change. Immutable. */
final class SheetConcerns implements Families<Boolean> {

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
        return true;
    }

    @Override
    public Boolean work(Work it) {
        return it instanceof Work.PlanBegun;
    }

    @Override
    public Boolean sheetWork(SheetWork it) {
        return true;
    }

    @Override
    public Boolean link(Link it) {
        return true;
    }

    @Override
    public Boolean sound(Sound it) {
        return !(it instanceof Sound.OutputReached || it instanceof Sound.Purity);
    }

    /** What is too much for meter or set is an answer here, and the next setting is lower. */
    @Override
    public Boolean caution(Caution it) {
        return it instanceof Caution.Checked checked && checked.check() == CheckKind.REST;
    }

    @Override
    public Boolean request(Request it) {
        boolean ofTurning = it instanceof Request.CutGenerator
                || it instanceof Request.GeneratorChanged
                || it instanceof Request.GeneratorUnchanged;
        return !ofTurning;
    }
}
