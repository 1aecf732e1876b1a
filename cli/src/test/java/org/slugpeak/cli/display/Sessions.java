package org.slugpeak.cli.display;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** Writes the records of small sessions by hand. */
public final class Sessions {

    private Sessions() {}

    public static SessionStart start(Seek seek) {
        return start(seek, "sim");
    }

    public static SessionStart start(Seek seek, String source) {
        PeakSettings settings = PeakSettings.defaults().withSeek(seek);
        Instant startedAt = Instant.parse("2026-11-25T10:00:00Z");
        return new SessionStart(1, startedAt, source, Measurand.DC_VOLTS, settings, "slugpeak test");
    }

    public static long seconds(double seconds) {
        return Math.round(seconds * 1e9);
    }

    public static ReadingTaken reading(double seconds, double value, double best, Trend trend) {
        Reading reading = Reading.of(seconds(seconds), value);
        return new ReadingTaken(reading, value, best, 0.001, value / best, trend);
    }

    public static ReadingTaken zeroReading(double seconds, double value, Trend trend) {
        Reading reading = Reading.of(seconds(seconds), value);
        return new ReadingTaken(reading, value, Double.NaN, Double.NaN, Double.NaN, trend);
    }

    public static ReadingTaken untrusted(double seconds, Condition condition, double smoothed, double best) {
        Reading reading = new Reading(seconds(seconds), smoothed, condition);
        return new ReadingTaken(reading, smoothed, best, 0.001, smoothed / best, Trend.STEADY);
    }

    /** A sink that keeps all it gets. */
    public static final class Kept implements RecordSink {

        private final List<SessionRecord> records = new ArrayList<>();

        @Override
        public void take(SessionRecord record) {
            records.add(record);
        }

        public List<SessionRecord> records() {
            return List.copyOf(records);
        }
    }
}
