package org.slugpeak.bridge.file;

import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.LinkWatch;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/**
 * Says when lines that come as they happen have ceased to come, or do not begin to, though nobody has closed the stream. One
 * thread at a time.
 */
final class Silence {

    /** A program on the other side may take some seconds to start and to find its meter; nobody waits longer unasked. */
    private static final long FIRST_PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private final LinkWatch watch = new LinkWatch(FIRST_PATIENCE_NANOS, LinkDetail.Sender.PROGRAM);
    private final ByteFeed feed;
    private final Ticker ticker;

    Silence(ByteFeed feed, Ticker ticker) {
        this.feed = feed;
        this.ticker = ticker;
        watch.opened(ticker.nowNanos());
    }

    /** Hears every reading on its way to a listener. */
    SourceListener before(SourceListener listener) {
        return new SourceListener() {
            @Override
            public void reading(Reading reading) {
                watch.reading(reading, feed.arrivalNanos(), listener);
            }

            @Override
            public void link(long tNanos, Link.State state, LinkDetail detail) {
                listener.link(tNanos, state, detail);
            }

            @Override
            public void garbled(String where, String problem) {
                listener.garbled(where, problem);
            }
        };
    }

    /** To be called when nothing is there. */
    void check(SourceListener listener) {
        watch.check(ticker.nowNanos(), listener);
    }
}
