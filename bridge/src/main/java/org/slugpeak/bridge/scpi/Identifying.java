package org.slugpeak.bridge.scpi;

import java.util.Arrays;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.bridge.source.Outlet;

/**
 * Asks who is there until somebody says so. Numbers and errors that come meanwhile are answers to older questions, other
 * words are echoes or a greeting; they are passed over, so that questions and answers fall into step again.
 */
final class Identifying implements Phase {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final Talk talk;
    private long dueNanos;

    Identifying(Talk talk) {
        this.talk = talk;
    }

    @Override
    public void enter(long nowNanos, Outlet out) {
        talk.send(ScpiDialect.IDENTIFY, out);
        dueNanos = nowNanos + PATIENCE_NANOS;
    }

    @Override
    public Phase line(String text, long nowNanos, Outlet out) {
        if (isSomethingElse(text)) {
            return this;
        }
        talk.identified(Identity.of(text));
        talk.reports(true);
        Phase next = new SettingUp(talk);
        next.enter(nowNanos, out);
        return next;
    }

    @Override
    public Phase silence(long nowNanos, Outlet out) {
        enter(nowNanos, out);
        return this;
    }

    private static boolean isSomethingElse(String text) {
        return !text.contains(",") // an identity has at least two fields
                || ScpiError.parse(text).isPresent()
                || Arrays.stream(text.split("[,;]"))
                        .allMatch(field -> MeterField.parse(field).isPresent());
    }

    @Override
    public OptionalLong dueNanos() {
        return OptionalLong.of(dueNanos);
    }
}
