package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Writes session records to a stream, one JSON object a line, in the format that {@link LogReader} describes. Lines
 * gather in memory until {@link #flush} or until there are many; they are never cut by a flush. One generator and one buffer
 * serve all records.
 *
 * <p>A stream that fails, such as a closed pipe, never stops the session: what comes after is dropped.
 *
 * <p>One thread at a time.
 */
public final class JsonLines implements RecordSink, Closeable {

    private static final int ENOUGH = 1 << 15;

    private final OutputStream out;
    private final LineBuffer lines = new LineBuffer();
    private final RecordWriter writer;

    private boolean broken;

    /**
     * Writes to a stream; it need not be buffered.
     *
     * @param out gets the lines; closed with this
     * @param sentences words for what the lines keep in words
     */
    public JsonLines(OutputStream out, Sentences sentences) {
        this.out = out;
        this.writer = new RecordWriter(lines, sentences);
    }

    @Override
    public void take(SessionRecord record) {
        if (broken) {
            return;
        }
        writer.write(record);
        if (lines.length() >= ENOUGH) {
            attempt(() -> lines.drainTo(out));
        }
    }

    /**
     * Whether so many lines wait that they will soon go out without being asked to. Whoever keeps a log beside this flushes both now,
     * the log first: what was shown must be kept.
     *
     * @return true from half the buffer on
     */
    public boolean isHalfFull() {
        return lines.length() >= ENOUGH / 2;
    }

    /** Hands over all lines. To be called before waiting for the next input, so that a program at the other end can answer. */
    public void flush() {
        if (!broken && lines.length() > 0) {
            attempt(this::drain);
        }
    }

    /**
     * Whether the stream has failed, so that nothing is written any more.
     *
     * @return true from the first failure on
     */
    public boolean isBroken() {
        return broken;
    }

    /** Flushes and closes the stream. Safe to call twice. */
    @Override
    public void close() {
        flush();
        attempt(out::close);
    }

    private void drain() throws IOException {
        lines.drainTo(out);
        out.flush();
    }

    private void attempt(Action action) {
        try {
            action.run();
        } catch (IOException e) {
            broken = true; // the stream knows why, and has said so
        }
    }

    private interface Action {
        void run() throws IOException;
    }
}
