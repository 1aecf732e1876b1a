package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionStart;

/**
 * Reads a session log back, record by record.
 *
 * <h2>The format, version 1</h2>
 *
 * <p>UTF-8 text, one JSON object (RFC 8259) a line, each line ended with LF. The field {@code type} says what it is.
 *
 * <p>Types and fields stand in {@code RecordForms}, the topics of {@code advice} in {@code AdviceTopics}; {@code docs/records.md}
 * shows both, and a test holds it to them. The first record is a {@code session}, the last one, if the session was closed properly,
 * an {@code end}. Of advice the topic tells the kind, and {@code text} is a sentence for a person: what is in it and in no other
 * field is not read back. A {@code mark} is an instruction where its text says one, and else a note; a note that would be taken for
 * an instruction has one space before it, which is not part of it.
 *
 * <p>{@code t} and {@code bestAt} are seconds from the first reading, on the readings' own clock, written exactly to the
 * nanosecond. Values are in {@code unit}; other numbers are dB unless their name says otherwise. Numbers are written with as
 * many digits as reading the same double back needs; what is not known, and the value of a reading that has none, is null;
 * there is no NaN and no infinity. Readers ignore fields and types that they do not know; a field is never used again with
 * another meaning, and what a reader must not ignore raises {@code version}.
 *
 * <h2>Reading</h2>
 *
 * <p>A line in the middle that is no record is told with its number and passed over. A last line that is torn, as a power cut
 * leaves it, is told by {@link #ending}. The file itself is never changed.
 *
 * <p>One thread at a time.
 */
public final class LogReader implements Closeable {

    private final Path file;
    private final LineInput lines;
    private final BadLineListener listener;
    private final RecordReader reader = new RecordReader();
    private final SessionStart start;

    private Optional<SessionEnd> end = Optional.empty();
    private String torn = "";

    /** Hears of lines that are no records. */
    @FunctionalInterface
    public interface BadLineListener {

        /**
         * A line was passed over.
         *
         * @param line its number, counted from 1
         * @param problem one line: what is wrong with it
         */
        void badLine(long line, String problem);
    }

    private LogReader(Path file, LineInput lines, BadLineListener listener) throws BadLog, IOException {
        this.file = file;
        this.lines = lines;
        this.listener = listener;
        this.start = first();
    }

    /**
     * Opens a log and reads its first record.
     *
     * @param file that was written by {@link SessionLog}, or by {@link JsonLines}
     * @param listener hears of lines that are no records, from within {@link #next}
     * @return the reader, behind the first record
     * @throws BadLog if the file cannot be opened, is no session log, or is one of a later version
     */
    public static LogReader open(Path file, BadLineListener listener) throws BadLog {
        LineInput lines = new LineInput(stream(file));
        try {
            return new LogReader(file, lines, listener);
        } catch (IOException e) {
            close(lines);
            throw unreadable(file, e);
        } catch (BadLog e) {
            close(lines);
            throw e;
        }
    }

    /**
     * The first record.
     *
     * @return what was recorded, with which settings
     */
    public SessionStart start() {
        return start;
    }

    /**
     * The next record behind the first, with its words.
     *
     * @return empty at the end
     * @throws BadLog if the file cannot be read on
     */
    public Optional<LogEntry> next() throws BadLog {
        try {
            while (lines.next()) {
                Optional<LogEntry> entry = entry();
                if (entry.isPresent()) {
                    end = entry.map(LogEntry::record)
                            .filter(SessionEnd.class::isInstance)
                            .map(SessionEnd.class::cast);
                    return entry;
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    /**
     * Reads to the end.
     *
     * @param sink takes every record behind the first, with its words
     * @throws BadLog if the file cannot be read on
     */
    public void drainTo(Consumer<LogEntry> sink) throws BadLog {
        for (Optional<LogEntry> entry = next(); entry.isPresent(); entry = next()) {
            sink.accept(entry.get());
        }
    }

    /**
     * How the log ends; to be asked when {@link #next} has given nothing.
     *
     * @return whether the session was closed properly
     */
    public LogEnding ending() {
        return end.isPresent() && torn.isEmpty()
                ? new LogEnding.Complete(end.get())
                : new LogEnding.Truncated(lines.number(), torn);
    }

    @Override
    public void close() {
        close(lines);
    }

    private Optional<LogEntry> entry() {
        try {
            if (lines.isOverlong()) {
                throw new BadLine("is longer than " + LineInput.LONGEST + " bytes");
            }
            return reader.read(lines.bytes(), lines.start(), lines.end());
        } catch (BadLine e) {
            if (lines.isTerminated()) {
                listener.badLine(lines.number(), e.problem());
            } else {
                torn = excerpt();
            }
            return Optional.empty();
        }
    }

    private SessionStart first() throws BadLog, IOException {
        if (!lines.next()) {
            throw new BadLog(file + " is empty: nothing was recorded in it");
        }
        try {
            Optional<LogEntry> entry = reader.read(lines.bytes(), lines.start(), lines.end());
            if (entry.isPresent() && entry.get().record() instanceof SessionStart found) {
                return found;
            }
        } catch (NewerVersion e) {
            throw new BadLog(file + " " + e.problem() + ": use the slugpeak that wrote it, or a later one", e);
        } catch (BadLine e) {
            if (!lines.isTerminated() && excerpt().startsWith("{\"type\":\"session\"")) {
                throw new BadLog(file + " is cut off within its first line: nothing was recorded in it", e);
            }
        }
        throw new BadLog(file + " is no session log: its first line is no session record;"
                + " give a .jsonl file that was written with --log or --json");
    }

    private String excerpt() {
        int length = Math.min(lines.end() - lines.start(), 1 << 12);
        String text = new String(lines.bytes(), lines.start(), length, StandardCharsets.UTF_8);
        return SafeText.line(text);
    }

    private static InputStream stream(Path file) throws BadLog {
        try {
            if (Files.isDirectory(file)) {
                throw new BadLog(file + " is a folder: give a session log");
            }
            return Files.newInputStream(file);
        } catch (NoSuchFileException e) {
            throw new BadLog("there is no file " + file + ": check the name", e);
        } catch (AccessDeniedException e) {
            throw new BadLog(file + " may not be read by you: check its permissions", e);
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static BadLog unreadable(Path file, IOException e) {
        return new BadLog("cannot read " + file + " (" + e.getMessage() + "): copy it elsewhere and try again", e);
    }

    private static void close(LineInput lines) {
        try {
            lines.close();
        } catch (IOException e) {
            // Nothing is written here, so that a file that will not close costs nothing.
        }
    }
}
