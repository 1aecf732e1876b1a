package org.slugpeak.bridge.scpi;

import java.util.Optional;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.Outlet;

/** What is known in the course of a talk with a meter. One thread at a time. */
final class Talk {

    private final ScpiDialect dialect;
    private final MeterSetting setting;
    private final Answers answers;
    private Optional<Identity> identity = Optional.empty();
    private boolean reports = true;
    private boolean settled;

    Talk(ScpiDialect dialect, MeterSetting setting) {
        this.dialect = dialect;
        this.setting = setting;
        this.answers = new Answers(dialect.all());
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
        out.send(dialect.message(dialect.fill(template, setting)));
    }
}
