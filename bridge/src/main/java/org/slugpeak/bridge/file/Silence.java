package org.slugpeak.bridge.file;

import org.slugpeak.bridge.source.LinkWatch;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;

/** Says when lines that come as they happen have ceased to come, though nobody has closed the stream. One thread at a time. */
final class Silence {

    private final LinkWatch watch = new LinkWatch();
    private final ByteFeed feed;
    private final Ticker ticker;
    private boolean begun;

    Silence(ByteFeed feed, Ticker ticker) {
        this.feed = feed;
        this.ticker = ticker;
    }

    /** Hears every reading on its way to a listener. */
    SourceListener before(SourceListener listener) {
        return new SourceListener() {
            @Override
            public void reading(Reading reading) {
                begin();
                watch.reading(reading, feed.arrivalNanos(), listener);
            }

            @Override
            public void link(long tNanos, Link.State state, String detail) {
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

    /** Before the first reading a person may still be typing, or a program starting. */
    private void begin() {
        if (!begun) {
            begun = true;
            watch.opened(feed.arrivalNanos());
        }
    }
}
