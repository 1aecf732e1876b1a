package org.slugpeak.bridge.sound;

import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/** Takes what a {@link SampleCarrier} brings, in order. */
interface SampleSink {

    /** A new stretch of samples begins that has nothing to do with those before. */
    void begin(SampleFormat format, long originNanos);

    /** Whole frames. */
    void samples(byte[] bytes, int length);

    /** From here on the stream's clock stands this much later than its samples say. */
    void shift(long nanos);

    /** The link changed. */
    void link(long tNanos, Link.State state, LinkDetail detail);

    /** Something to be told and counted. */
    void garbled(String where, String problem);
}
