package org.slugpeak.cli.faults;

import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/** Hears everything and keeps nothing. */
final class MutedListener implements SourceListener, Outlet {

    @Override
    public void reading(Reading reading) {}

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {}

    @Override
    public void garbled(String where, String problem) {}

    @Override
    public void garbled(Garble kind, String problem) {}

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {}

    @Override
    public void remark(Untimed what) {}

    @Override
    public void send(byte[] bytes) {}

    @Override
    public void refused(String message) {}
}
