package org.slugpeak.cli.report;

import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Sound;

/** Which records tell of set, signal, instrument or job, and not only of what the hand was to do at that moment. Immutable. */
final class Lasting implements Families<Boolean> {

    @Override
    public Boolean other(SessionRecord it) {
        return false;
    }

    @Override
    public Boolean caution(Caution it) {
        return true;
    }

    @Override
    public Boolean guard(Guard it) {
        return true;
    }

    @Override
    public Boolean link(Link it) {
        return true;
    }

    @Override
    public Boolean said(Said it) {
        return true;
    }

    @Override
    public Boolean sound(Sound it) {
        return true;
    }
}
