package org.slugpeak.bridge.scpi;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.Outlet;

/**
 * Asks for one reading after the other. A meter that keeps silent is asked anew who it is: it may have been switched off and
 * on, and has then forgotten its setting.
 */
final class Measuring implements Phase {

    private static final long AFTER_DAMAGE_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    /** FETCh? gives the latest reading again and again, as fast as the line carries it. */
    private static final long BETWEEN_FETCHES_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    private static final Pattern FETCH = Pattern.compile(":?FETC.*", Pattern.CASE_INSENSITIVE);

    private final Talk talk;
    private final String question;
    private final long intervalNanos;
    private long dueNanos;
    private boolean asked = true;

    Measuring(Talk talk, String question) {
        this.talk = talk;
        this.question = question;
        this.intervalNanos = FETCH.matcher(question).matches()
                ? Math.max(BETWEEN_FETCHES_NANOS, talk.dialect().intervalNanos())
                : talk.dialect().intervalNanos();
    }

    @Override
    public void enter(long nowNanos, Outlet out) {
        talk.send(question, out);
        asked = true;
        dueNanos = nowNanos + talk.dialect().patienceNanos();
    }

    @Override
    public Phase line(String text, long nowNanos, Outlet out) {
        if (ScpiError.parse(text).isPresent() || text.contains("?")) {
            return this; // an answer to an older question, or the meter's own echo
        }
        if (!talk.answers().deliver(text, nowNanos, out)) {
            damaged(nowNanos);
        } else if (intervalNanos == 0) {
            enter(nowNanos, out);
        } else {
            asked = false;
            dueNanos = nowNanos + intervalNanos;
        }
        return this;
    }

    @Override
    public Phase silence(long nowNanos, Outlet out) {
        if (!asked) {
            enter(nowNanos, out);
            return this;
        }
        out.garbled(Garble.UNANSWERED, "no answer to " + question);
        Phase next = new Identifying(talk);
        next.enter(nowNanos, out);
        return next;
    }

    @Override
    public void damaged(long nowNanos) {
        asked = false;
        dueNanos = nowNanos + AFTER_DAMAGE_NANOS;
    }

    @Override
    public OptionalLong dueNanos() {
        return OptionalLong.of(dueNanos);
    }
}
