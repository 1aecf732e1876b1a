package org.slugpeak.cli.run;

import java.io.OutputStream;
import java.io.PrintStream;
import org.slugpeak.bridge.log.JsonLines;
import org.slugpeak.core.session.SessionRecord;

/** Writes every record as a line of JSON. A reader that goes away is said once; the session goes on for its log. */
public final class JsonOutput implements SessionOutput {

    private final JsonLines lines;
    private final PrintStream error;

    /**
     * Records on a stream.
     *
     * @param out standard output; need not be buffered
     * @param error for the one line when the other end goes away
     */
    public JsonOutput(OutputStream out, PrintStream error) {
        this.lines = new JsonLines(out);
        this.error = error;
    }

    @Override
    public void take(SessionRecord record) {
        lines.take(record);
    }

    @Override
    public void flush() {
        lines.flush();
        lines.pollFailure()
                .ifPresent(failure -> error.println("slugpeak: nobody reads the JSON lines any more ("
                        + failure.getMessage() + "); the session goes on without them"));
    }

    @Override
    public void close() {
        flush();
        lines.close();
    }
}
