package org.slugpeak.bridge.log;

import java.nio.file.Path;
import java.time.Instant;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionStart;

/** A program to be killed: logs one reading after the other and acknowledges each on standard output once it is flushed. */
final class LogVictim {

    private LogVictim() {}

    /** Logs to the file that is named until it is killed. */
    public static void main(String[] arguments) throws Exception {
        try (SessionLog log = SessionLog.create(Path.of(arguments[0]), new TestWords(), LogVictim::refuse)) {
            log.take(new SessionStart(
                    1, Instant.EPOCH, "sim", Measurand.DC_VOLTS, PeakSettings.defaults(), "slugpeak 0.1.0"));
            for (int i = 0; !System.out.checkError(); i++) {
                log.take(new ReadingTaken(Reading.of(i, i), i, i, i, 1, Trend.STEADY));
                log.flush();
                System.out.println(i);
            }
        }
    }

    private static void refuse(String warning) {
        throw new IllegalStateException(warning);
    }
}
