package org.slugpeak.bridge.scpi;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.source.Outlet;

/**
 * Says what the meter shall measure, one message at a time, and asks after each whether it was understood. Old errors are
 * emptied first. A meter that does not know a message goes on as it is set, but a range that the user asked for must be
 * taken.
 */
final class SettingUp implements Phase {

    private static final long PATIENCE_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);

    /** An error queue is never longer; a meter that always reports one must not hold us up. */
    private static final int MOST_ERRORS = 32;

    private final Talk talk;
    private final Deque<String> left = new ArrayDeque<>();
    private final String range;
    private String saying = "";
    private int errors;
    private Optional<ScpiError> complaint = Optional.empty();
    private long dueNanos;

    SettingUp(Talk talk) {
        this.talk = talk;
        this.range = talk.setting().rangeVolts().isPresent() ? talk.dialect().range() : "";
        for (String each : new String[] {talk.dialect().remote(), talk.dialect().configure(), range}) {
            if (!each.isEmpty()) {
                left.add(each);
            }
        }
    }

    @Override
    public void enter(long nowNanos, Outlet out) {
        askForErrors(nowNanos, out);
    }

    @Override
    public Phase line(String text, long nowNanos, Outlet out) {
        Optional<ScpiError> error = ScpiError.parse(text);
        if (error.isEmpty()) {
            return this;
        }
        errors++;
        if (!error.get().isNone() && errors < MOST_ERRORS) {
            complaint = complaint.or(() -> error);
            askForErrors(nowNanos, out);
            return this;
        }
        return said(nowNanos, out);
    }

    @Override
    public Phase silence(long nowNanos, Outlet out) {
        talk.reports(false);
        return said(nowNanos, out);
    }

    @Override
    public OptionalLong dueNanos() {
        return OptionalLong.of(dueNanos);
    }

    private Phase said(long nowNanos, Outlet out) {
        if (complaint.isPresent() && !saying.isEmpty() && saying.equals(range)) {
            out.refused(refusal(complaint.get()));
        }
        talk.isEven();
        if (left.isEmpty()) {
            Phase next = new Trying(talk);
            next.enter(nowNanos, out);
            return next;
        }
        saying = left.remove();
        complaint = Optional.empty();
        errors = 0;
        talk.send(saying, out);
        if (!talk.reports()) {
            return said(nowNanos, out);
        }
        askForErrors(nowNanos, out);
        return this;
    }

    private String refusal(ScpiError error) {
        String name = talk.identity().map(Identity::name).orElse("the meter");
        return name + " does not take '" + talk.dialect().fill(range, talk.setting()) + "' (" + error
                + "): give --range one of its own ranges, or leave it out";
    }

    private void askForErrors(long nowNanos, Outlet out) {
        talk.send(ScpiDialect.ERROR, out);
        dueNanos = nowNanos + talk.patience(PATIENCE_NANOS);
    }
}
