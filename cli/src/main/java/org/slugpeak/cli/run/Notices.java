package org.slugpeak.cli.run;

import java.io.PrintStream;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.SessionRecord;

/** Says on standard error, a line each, what went wrong with the link or with single lines of input. */
public final class Notices implements SessionOutput {

    private final PrintStream error;

    /**
     * Notices on a stream.
     *
     * @param error standard error
     */
    public Notices(PrintStream error) {
        this.error = error;
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Link link) {
            say("link " + link.state().code() + (link.detail().isEmpty() ? "" : ": " + link.detail()));
        } else if (record instanceof Advice advice && advice.topic().equals("not-a-reading")) {
            say(advice.text());
        }
    }

    private void say(String words) {
        error.println("slugpeak: " + SafeText.line(words));
    }
}
