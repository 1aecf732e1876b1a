package org.slugpeak.cli.run;

import java.util.Optional;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;

/** Controls of a session that does nothing but remember why it was to end. One thread at a time. */
public final class QuietControl implements SessionControl {

    private Optional<EndReason> reason = Optional.empty();

    /** Why it was to end; empty where nobody said so. */
    public Optional<EndReason> reason() {
        return reason;
    }

    @Override
    public void note(String text) {}

    @Override
    public void command(Instruction instruction) {}

    @Override
    public void nextAdjuster() {}

    @Override
    public void sameAdjuster() {}

    @Override
    public void previousAdjuster() {}

    @Override
    public void skipAdjuster() {}

    @Override
    public void quit(EndReason why) {
        reason = Optional.of(why);
    }
}
