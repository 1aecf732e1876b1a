package org.slugpeak.cli.check;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.HumRejection;
import org.slugpeak.bridge.source.LinkReport;
import org.slugpeak.bridge.source.LinkStatistics;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

/** Listens to a link for its statistics, and for hum where some was put on the input. */
public final class LinkEar implements SourceListener {

    private final LinkStatistics statistics;
    private final Optional<HumRejection> hum;

    public LinkEar(LinkStatistics statistics, Optional<HumRejection> hum) {
        this.statistics = statistics;
        this.hum = hum;
    }

    @Override
    public void reading(Reading reading) {
        statistics.reading(reading);
        hum.ifPresent(each -> each.reading(reading));
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        statistics.link(tNanos, state, detail);
    }

    @Override
    public void garbled(String where, String problem) {
        statistics.garbled(where, problem);
    }

    @Override
    public void garbled(String where, Garble kind, String problem) {
        statistics.garbled(where, kind, problem);
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        statistics.notice(tNanos, notice, detail);
    }

    public LinkReport report() {
        return statistics.report();
    }

    public OptionalDouble humRejectionDb() {
        return hum.map(HumRejection::decibels).orElse(OptionalDouble.empty());
    }
}
