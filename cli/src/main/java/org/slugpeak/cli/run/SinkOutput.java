package org.slugpeak.cli.run;

import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Hands records to somebody who only listens, such as the simulated hand.
 *
 * @param listener gets every record
 */
public record SinkOutput(RecordSink listener) implements SessionOutput {

    @Override
    public void take(SessionRecord record) {
        listener.take(record);
    }
}
