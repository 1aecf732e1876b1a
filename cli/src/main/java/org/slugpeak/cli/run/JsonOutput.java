package org.slugpeak.cli.run;

import java.io.OutputStream;
import org.slugpeak.bridge.log.JsonLines;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.session.SessionRecord;

/** Writes every record as a line of JSON. Where they cannot be written the session goes on for its log. */
public final class JsonOutput implements SessionOutput {

    private final JsonLines lines;

    /**
     * Records on a stream.
     *
     * @param out standard output, which says by itself where it fails; need not be buffered
     */
    public JsonOutput(OutputStream out) {
        this.lines = new JsonLines(out, new RecordSentences());
    }

    @Override
    public void take(SessionRecord record) {
        lines.take(record);
    }

    @Override
    public boolean isFull() {
        return lines.isHalfFull();
    }

    @Override
    public void flush() {
        lines.flush();
    }

    @Override
    public void close() {
        flush();
        lines.close();
    }
}
