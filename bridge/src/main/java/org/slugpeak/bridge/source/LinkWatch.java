package org.slugpeak.bridge.source;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/**
 * Says when an instrument is lost, when its last number is old, and when readings come again. Each is said once. A reading is
 * old when none came for five times the usual interval, and never before two seconds. One thread at a time.
 *
 * <p>An instrument's own time stamps run at their own speed; events are placed on the axis of the readings, as far behind
 * the last reading as they came after it.
 */
public final class LinkWatch {

    /** A meter that ranges by itself may pause for most of a second, a busy computer for longer. */
    private static final long NEVER_STALE_BEFORE_NANOS = TimeUnit.SECONDS.toNanos(2);

    /** While the usual interval is unknown: a slow meter needs two seconds for one reading. */
    private static final long STALE_WHEN_UNKNOWN_NANOS = TimeUnit.SECONDS.toNanos(3);

    private static final int INTERVALS_UNTIL_STALE = 5;

    private enum State {
        LIVE,
        STALE,
        LOST
    }

    private final UsualInterval usual = new UsualInterval();
    private final long firstPatienceNanos;
    private final LinkDetail.Sender sender;
    private State state = State.LIVE;
    private boolean heard;
    private long readingNanos;
    private long arrivalNanos;
    private boolean begun;
    private long openedNanos;
    private boolean intervalCounts;

    /**
     * Nothing is known yet, and nothing is watched.
     *
     * @param firstPatienceNanos how long the first reading may take, once readings may be expected
     * @param sender who should send
     */
    public LinkWatch(long firstPatienceNanos, LinkDetail.Sender sender) {
        this.firstPatienceNanos = firstPatienceNanos;
        this.sender = sender;
    }

    /**
     * From now on readings may be expected.
     *
     * @param nowNanos the time now, on the ticker's axis
     */
    public void opened(long nowNanos) {
        begun = true;
        openedNanos = nowNanos;
    }

    /**
     * Passes a reading on; where it ends a silence, that is said before it.
     *
     * @param reading on the source's own axis
     * @param nowNanos when it arrived, on the ticker's axis
     * @param listener hears both
     */
    public void reading(Reading reading, long nowNanos, SourceListener listener) {
        if (state != State.LIVE) {
            double seconds = (nowNanos - (heard ? arrivalNanos : openedNanos)) / 1e9;
            state = State.LIVE;
            listener.link(reading.tNanos(), Link.State.RESUMED, new LinkDetail.After(seconds));
        }
        if (heard && intervalCounts) {
            usual.add(nowNanos - arrivalNanos);
        }
        heard = true;
        intervalCounts = true;
        readingNanos = reading.tNanos();
        arrivalNanos = nowNanos;
        listener.reading(reading);
    }

    void lost(long nowNanos, LinkDetail detail, SourceListener listener) {
        intervalCounts = false;
        if (state != State.LOST) {
            state = State.LOST;
            listener.link(eventTime(nowNanos), Link.State.LOST, detail);
        }
    }

    /**
     * Says that the last reading is old, where it has become so.
     *
     * @param nowNanos the time now, on the ticker's axis
     * @param listener hears of it once
     * @return whether it was said now
     */
    public boolean check(long nowNanos, SourceListener listener) {
        OptionalLong stale = staleAtNanos();
        if (stale.isEmpty() || nowNanos - stale.getAsLong() < 0) {
            return false;
        }
        state = State.STALE;
        LinkDetail detail = heard
                ? new LinkDetail.Silent((nowNanos - arrivalNanos) / 1e9)
                : new LinkDetail.NothingYet((nowNanos - openedNanos) / 1e9, sender);
        listener.link(eventTime(nowNanos), Link.State.STALE, detail);
        return true;
    }

    OptionalLong staleAtNanos() {
        if (!begun || state != State.LIVE) {
            return OptionalLong.empty();
        }
        return OptionalLong.of((heard ? arrivalNanos : openedNanos) + patienceNanos());
    }

    private long patienceNanos() {
        if (!heard) {
            return firstPatienceNanos;
        }
        return usual.isKnown()
                ? Math.max(NEVER_STALE_BEFORE_NANOS, INTERVALS_UNTIL_STALE * usual.nanos())
                : STALE_WHEN_UNKNOWN_NANOS;
    }

    private long eventTime(long nowNanos) {
        return heard ? readingNanos + (nowNanos - arrivalNanos) : nowNanos;
    }
}
