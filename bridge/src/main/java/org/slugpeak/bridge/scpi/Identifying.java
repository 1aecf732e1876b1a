package org.slugpeak.bridge.scpi;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.bridge.source.Outlet;

/**
 * Asks who is there until somebody says so. Numbers and errors that come meanwhile are answers to older questions, other
 * words are echoes or a greeting; they are passed over, so that questions and answers fall into step again. Who does not answer is
 * asked with another line end, and then, without a name, for a reading.
 */
final class Identifying implements Phase {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final Identity NAMELESS = new Identity("a meter that does not say its name");

    private final Talk talk;
    private final List<String> questions;
    private boolean talksByItself;
    private int asked;
    private long firstNanos;
    private long dueNanos;

    Identifying(Talk talk) {
        this.talk = talk;
        List<String> readings = talk.dialect().readings();
        this.questions =
                List.of(ScpiDialect.IDENTIFY, ScpiDialect.IDENTIFY, readings.get(0), readings.get(readings.size() - 1));
    }

    @Override
    public void enter(long nowNanos, Outlet out) {
        firstNanos = nowNanos;
        ask(nowNanos, out);
    }

    @Override
    public Phase line(String text, long nowNanos, Outlet out) {
        if (isReading(text)) {
            talk.identified(NAMELESS);
        } else if (isSomethingElse(text)) {
            return this;
        } else {
            talk.identified(Identity.of(text));
        }
        if (asked > 1) {
            talk.isSlow(nowNanos - firstNanos, asked - 1);
        }
        talk.reports(true);
        Phase next = new SettingUp(talk);
        next.enter(nowNanos, out);
        return next;
    }

    @Override
    public Phase silence(long nowNanos, Outlet out) {
        if (questions.get(asked % questions.size()).equals(ScpiDialect.IDENTIFY)) {
            talk.otherLineEnd();
        }
        ask(nowNanos, out);
        return this;
    }

    private void ask(long nowNanos, Outlet out) {
        talk.send(questions.get(asked % questions.size()), out);
        asked++;
        dueNanos = nowNanos + PATIENCE_NANOS;
    }

    /** A number after a reading was asked for comes from a meter that has no name to say. */
    private boolean isReading(String text) {
        boolean askedForOne =
                asked > questions.indexOf(talk.dialect().readings().get(0));
        boolean number = !text.contains("?")
                && talk.answers().first(talk.answers().wording(text), 0).isPresent();
        talksByItself |= number && !askedForOne;
        return number && !talksByItself;
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
