package org.slugpeak.cli.report;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.cli.words.ReportPhrase;

/** Says which lines of a log were no records: the first few one by one, then how many in all. One thread at a time. */
public final class LogComplaints implements LogReader.BadLineListener {

    private static final int TOLD_ONE_BY_ONE = 5;

    private final Path log;
    private final PrintWriter error;
    private long count;

    public LogComplaints(Path log, PrintWriter error) {
        this.log = log;
        this.error = error;
    }

    @Override
    public void badLine(long line, String problem) {
        count++;
        if (count <= TOLD_ONE_BY_ONE) {
            error.println(ReportPhrase.PASSED_OVER.of(log, line, problem));
        }
    }

    public void summarise() {
        if (count > TOLD_ONE_BY_ONE) {
            error.println(ReportPhrase.PASSED_OVER_IN_ALL.of(log, count));
        }
    }
}
