package org.slugpeak.cli.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.log.LogEnding;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.core.session.ReadingTaken;

/**
 * A log whose readings were counted when they were sent: 1, 2, 3 and so on.
 *
 * @param values of its readings
 * @param closed whether the session was closed properly
 */
record KeptLog(List<Double> values, boolean closed) {

    /** Reads it; a damaged line anywhere but at a torn end is a failure. */
    static KeptLog read(Path file) throws BadLog {
        if (!Files.exists(file)) {
            return new KeptLog(List.of(), false);
        }
        List<Double> values = new ArrayList<>();
        try (LogReader reader =
                LogReader.open(file, (line, problem) -> Trial.require(false, "line " + line + " " + problem))) {
            reader.drainTo(entry -> {
                if (entry.record() instanceof ReadingTaken taken) {
                    values.add(taken.reading().value());
                }
            });
            return new KeptLog(List.copyOf(values), reader.ending() instanceof LogEnding.Complete);
        } catch (BadLog unwritten) {
            Trial.require(
                    String.valueOf(unwritten.getMessage()).matches(".*(is empty|cut off within its first line).*"),
                    "" + unwritten);
            return new KeptLog(List.of(), false);
        }
    }

    /** Every reading stands once and in order, and all are there up to the last that was shown. */
    void requireAll(long lastShown) {
        for (int i = 1; i < values.size(); i++) {
            Trial.require(
                    values.get(i) == values.get(i - 1) + 1, values.get(i - 1) + " is followed by " + values.get(i));
        }
        long last = values.isEmpty() ? 0 : values.get(values.size() - 1).longValue();
        Trial.require(last >= lastShown, "shown up to " + lastShown + ", kept up to " + last);
    }
}
