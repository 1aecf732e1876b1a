package org.slugpeak.cli.run;

import org.slugpeak.cli.page.SecondScreen;
import org.slugpeak.core.session.SessionRecord;

/**
 * Closes the second screen with the session. Its records come by way of what the terminal shows, so that what is seen is in the log already.
 *
 * @param screen closed with this
 */
public record PageOutput(SecondScreen screen) implements SessionOutput {

    @Override
    public void take(SessionRecord record) {}

    @Override
    public void close() {
        screen.close();
    }
}
