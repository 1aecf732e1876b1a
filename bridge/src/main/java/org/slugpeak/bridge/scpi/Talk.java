package org.slugpeak.bridge.scpi;

import java.util.Optional;
import org.slugpeak.bridge.instrument.Identity;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.Outlet;

/** What is known in the course of a talk with a meter. One thread at a time. */
final class Talk {

    private final ScpiDialect dialect;
    private final MeterSetting setting;
    private final Answers answers;
    private Optional<Identity> identity = Optional.empty();
    private String lineEnd;
    private long answerNanos;
    private int owed;
    private boolean reports = true;
    private boolean settled;

    Talk(ScpiDialect dialect, MeterSetting setting) {
        this.dialect = dialect;
        this.setting = setting;
        this.answers = new Answers(dialect, setting);
        this.lineEnd = dialect.lineEnds().get(0);
    }

    ScpiDialect dialect() {
        return dialect;
    }

    MeterSetting setting() {
        return setting;
    }

    Answers answers() {
        return answers;
    }

    Optional<Identity> identity() {
        return identity;
    }

    void identified(Identity found) {
        identity = Optional.of(found);
    }

    /** Whether the meter answers when asked for its errors. */
    boolean reports() {
        return reports;
    }

    void reports(boolean does) {
        reports = does;
    }

    boolean settled() {
        return settled;
    }

    void settle() {
        settled = true;
    }

    void send(String template, Outlet out) {
        out.send(message(dialect.fill(template, setting)));
    }

    byte[] message(String text) {
        return dialect.message(text, lineEnd);
    }

    /** Nobody answers: perhaps the meter waits for another line end. */
    void otherLineEnd() {
        int next = dialect.lineEnds().indexOf(lineEnd) + 1;
        lineEnd = dialect.lineEnds().get(next % dialect.lineEnds().size());
    }

    /** The meter has taken so long for its first answer, and will answer so many questions that were asked meanwhile. */
    void isSlow(long tookNanos, int stillOwed) {
        answerNanos = tookNanos;
        owed = stillOwed;
    }

    /** What it owed has come, or is waited for no longer. */
    void isEven() {
        owed = 0;
    }

    /** How long to wait for an answer that a quick meter gives in some time. */
    long patience(long quickNanos) {
        return quickNanos + (1 + owed) * answerNanos;
    }
}
