package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;

/**
 * Writes session records to a new file, in the format that {@link LogReader} describes.
 *
 * <p><b>What survives.</b> {@link #flush} hands whole lines to the system with one write: when the program is killed after it,
 * nothing is lost, and when it is killed in it, the last line may be torn, which {@link LogReader} recovers from. A thread of
 * its own forces what was written to the disk every half second, and at once after a mark, an adjuster, a {@code held} and the
 * end: a power cut loses at most the last second on a disk that takes less than half a second.
 *
 * <p><b>A full disk</b> never stops the session. The file is cut back to its last whole line, the user is warned once, and
 * lines gather in memory; when there is space again they are written, and a {@link Link.LogGap} says how many could not be kept.
 *
 * <p>One thread at a time.
 */
public final class SessionLog implements RecordSink, Closeable {

    private static final int ENOUGH = 1 << 16;
    private static final int MOST_KEPT = 1 << 22;
    private static final int PROBE = 1 << 12;

    private final String name;
    private final Storage storage;
    private final Consumer<String> warning;
    private final Syncer syncer;
    private final LineBuffer lines = new LineBuffer();
    private final RecordWriter writer;

    private boolean stuck;
    private boolean syncFailed;
    private boolean closed;
    private boolean whole = true;
    private long lost;
    private long lastNanos;

    SessionLog(String name, Storage storage, Sentences sentences, Consumer<String> warning) {
        this.name = name;
        this.storage = storage;
        this.warning = warning;
        this.syncer = new Syncer(storage);
        this.writer = new RecordWriter(lines, sentences);
    }

    /**
     * Makes a new log; it never touches a file that is there.
     *
     * @param file to be made
     * @param sentences words for what the log keeps in words
     * @param warning hears, in the thread that uses the log, one line when writing fails and one when it goes on
     * @return the log, without records
     * @throws BadLog if the file is there already or cannot be made
     */
    public static SessionLog create(Path file, Sentences sentences, Consumer<String> warning) throws BadLog {
        try {
            return new SessionLog(file.toString(), FileStorage.create(file), sentences, warning);
        } catch (FileAlreadyExistsException e) {
            throw new BadLog(
                    file + " is there already and a session log never overwrites: choose another name or move it away",
                    e);
        } catch (NoSuchFileException e) {
            throw new BadLog("cannot make " + file + ": its folder is not there; make the folder first", e);
        } catch (AccessDeniedException e) {
            throw new BadLog("cannot make " + file + ": you may not write in its folder; choose another", e);
        } catch (IOException e) {
            throw new BadLog("cannot make " + file + " (" + e.getMessage() + "): choose another place", e);
        }
    }

    @Override
    public void take(SessionRecord record) {
        if (closed) {
            return;
        }
        lastNanos = record.tNanos();
        if (stuck && lines.length() >= MOST_KEPT) {
            lost++;
            whole = false;
            return;
        }
        writer.write(record);
        if (isWorthADisk(record)) {
            flush();
            syncer.hurry();
        } else if (lines.length() >= ENOUGH && !stuck) {
            flush();
        }
    }

    /** Hands all lines to the system. To be called before waiting for the next reading, and before telling others of it. */
    public void flush() {
        if (!closed && lines.length() > 0) {
            write();
        }
        syncer.pollFailure().ifPresent(this::warnOfSync);
    }

    /** Whether lines cannot be written at present. */
    public boolean isStuck() {
        return stuck;
    }

    /**
     * Whether every record is in the file; to be asked when it is closed.
     *
     * @return false where some are missing, or the disk has not confirmed them, which the warning has said
     */
    public boolean isWhole() {
        return whole && lines.length() == 0;
    }

    /**
     * Writes what is left, forces it to the disk and closes the file; one in which nothing was ever written is taken away again.
     * Safe to call twice.
     */
    @Override
    public void close() {
        if (closed) {
            return;
        }
        flush();
        if (lines.length() > 0) {
            warning.accept(name + " ends early: its last records could not be written; what is in it can be read");
        }
        closed = true;
        syncer.close();
        syncer.pollFailure().ifPresent(this::warnOfSync);
        try {
            storage.close();
        } catch (IOException e) {
            whole = false;
            warning.accept("closing " + name + " failed (" + e.getMessage() + "): look whether it is whole");
        }
    }

    private static boolean isWorthADisk(SessionRecord record) {
        return record instanceof Said
                || record instanceof Adjuster
                || record instanceof Held
                || record instanceof SessionEnd;
    }

    private void write() {
        try {
            int limit = stuck ? PROBE : MOST_KEPT;
            while (lines.length() > 0) {
                write(lines.someLines(limit));
                syncer.written();
                limit = Math.min(MOST_KEPT, 4 * limit);
            }
            goOn();
        } catch (IOException e) {
            fail(e);
        }
    }

    private void write(int count) throws IOException {
        long before = storage.length();
        try {
            storage.write(lines.bytes(), 0, count);
        } catch (IOException e) {
            keepWhole(before);
            throw e;
        }
        lines.discard(count);
    }

    /** Cuts the file back to its last whole line and keeps in memory what is not in it. */
    private void keepWhole(long before) throws IOException {
        int written = (int) (storage.length() - before);
        int whole = lines.lastLineEnd(written);
        try {
            storage.truncate(before + whole);
            lines.discard(whole);
        } catch (IOException e) {
            lines.discard(written);
        }
    }

    private void fail(IOException e) {
        if (!stuck) {
            stuck = true;
            warning.accept("cannot write to " + name + " (" + e.getMessage()
                    + "): measuring goes on without a record; free some space and the record goes on");
        }
    }

    private void goOn() {
        if (!stuck) {
            return;
        }
        stuck = false;
        String missing =
                lost == 0 ? "nothing is missing" : lost + (lost == 1 ? " record is" : " records are") + " missing";
        warning.accept(name + " is written again: " + missing);
        if (lost > 0) {
            writer.write(new Link.LogGap(lastNanos, lost));
            lost = 0;
            write();
        }
    }

    private void warnOfSync(IOException e) {
        whole = false;
        if (!syncFailed) {
            syncFailed = true;
            warning.accept("the disk does not confirm what is written to " + name + " (" + e.getMessage()
                    + "): a power cut may cost more than the last second");
        }
    }
}
