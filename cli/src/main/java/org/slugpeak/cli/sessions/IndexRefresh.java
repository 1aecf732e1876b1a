package org.slugpeak.cli.sessions;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.report.EndingText;
import org.slugpeak.cli.report.SessionStory;
import org.slugpeak.cli.report.StoryTeller;

/**
 * Brings the index to what is in the folder: what is new or has changed is read, as far as it reads, what is gone is forgotten, and
 * nothing else is touched. Logs are read by as many threads as there are processors; the index is written by the caller's.
 */
public final class IndexRefresh {

    /** So many at a time are in memory, and are kept when the program is killed. */
    private static final int BATCH = 200;

    private final Path folder;
    private final SessionIndex index;

    /**
     * A refresh that has not begun.
     *
     * @param folder where the logs are
     * @param index of this folder
     */
    public IndexRefresh(Path folder, SessionIndex index) {
        this.folder = folder;
        this.index = index;
    }

    /**
     * Does it.
     *
     * @param told how many files are to be read, before the first is, where there are any
     * @throws BridgeException where the folder or the index cannot be used
     */
    public void run(IntConsumer told) throws BridgeException {
        Map<String, LogStamp> there = LogFolder.list(folder);
        Map<String, LogStamp> known = index.known();
        TreeSet<String> gone = new TreeSet<>(known.keySet());
        gone.removeAll(there.keySet());
        List<LogStamp> stale = new ArrayList<>();
        List<LogStamp> touched = new ArrayList<>();
        for (LogStamp stamp : there.values()) {
            Optional<LogStamp> before = Optional.ofNullable(known.get(stamp.file()));
            if (before.isEmpty()) {
                stale.add(stamp);
            } else if (!stamp.isAsIn(before.get())) {
                LogStamp hashed = hashed(stamp);
                (hashed.saysTheSame(before.get()) ? touched : stale).add(hashed);
            }
        }
        if (!stale.isEmpty()) {
            told.accept(stale.size());
        }
        index.forget(gone);
        index.touch(touched);
        read(stale);
    }

    private void read(List<LogStamp> stale) throws BridgeException {
        ExecutorService readers = Executors.newFixedThreadPool(
                Math.max(1, Math.min(stale.size(), Runtime.getRuntime().availableProcessors())));
        try {
            for (int from = 0; from < stale.size(); from += BATCH) {
                List<Future<ReadLog>> batch = new ArrayList<>();
                stale.subList(from, Math.min(stale.size(), from + BATCH))
                        .forEach(stamp -> batch.add(readers.submit(() -> read(stamp))));
                index.update(gathered(batch));
            }
        } finally {
            readers.shutdownNow();
        }
    }

    private static List<ReadLog> gathered(List<Future<ReadLog>> batch) {
        List<ReadLog> read = new ArrayList<>();
        for (Future<ReadLog> each : batch) {
            try {
                read.add(each.get());
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
        return read;
    }

    /** A file that is no session log is remembered as that, so that it is not read again and again. */
    private ReadLog read(LogStamp stamp) {
        try (LogReader reader = LogReader.open(folder.resolve(stamp.file()), (line, problem) -> {})) {
            StoryTeller teller = new StoryTeller(stamp.file(), reader.start());
            reader.drainTo(teller::take);
            SessionStory story = teller.story(EndingText.of(reader.ending()));
            return new ReadLog(hashed(stamp), Optional.of(KeptSession.of(story)), KeptSession.said(story));
        } catch (BadLog e) {
            return new ReadLog(hashed(stamp), Optional.empty(), "");
        }
    }

    private LogStamp hashed(LogStamp stamp) {
        try {
            return stamp.withHash(stamp.hash(folder));
        } catch (IOException e) {
            return stamp;
        }
    }
}
