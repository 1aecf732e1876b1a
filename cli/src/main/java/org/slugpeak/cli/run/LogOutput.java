package org.slugpeak.cli.run;

import java.io.PrintStream;
import java.nio.file.Path;
import org.slugpeak.bridge.log.SessionLog;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.session.SessionRecord;

/** Keeps the session in a file. */
public final class LogOutput implements SessionOutput {

    private final SessionLog log;

    private LogOutput(SessionLog log) {
        this.log = log;
    }

    /**
     * Begins a new log.
     *
     * @param file must not be there yet
     * @param error for a line when the disk is full
     * @return an open log
     * @throws BadLog if the file is there or cannot be made
     */
    public static LogOutput create(Path file, PrintStream error) throws BadLog {
        return new LogOutput(
                SessionLog.create(file, new RecordSentences(), warning -> error.println("slugpeak: " + warning)));
    }

    @Override
    public void take(SessionRecord record) {
        log.take(record);
    }

    @Override
    public void flush() {
        log.flush();
    }

    @Override
    public boolean isWhole() {
        return log.isWhole();
    }

    @Override
    public void close() {
        log.close();
    }
}
