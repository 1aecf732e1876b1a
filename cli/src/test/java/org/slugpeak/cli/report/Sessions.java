package org.slugpeak.cli.report;

import java.time.Instant;
import java.time.ZoneId;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.Work;

/** Sessions written by hand. */
final class Sessions {

    static final SessionStart START = new SessionStart(
            1,
            Instant.parse("2026-11-25T09:00:00Z"),
            "sim:tarnfield",
            Measurand.DC_VOLTS,
            PeakSettings.defaults(),
            "slugpeak 0.1.0");

    static final Cover COVER = new Cover(Facts.none(), ZoneId.of("UTC"), Cover.Paper.ANY, false, false);

    private Sessions() {}

    static StoryTeller teller(String name) {
        return new StoryTeller(name, START);
    }

    static ReadingTaken reading(double seconds, double value, double best) {
        return new ReadingTaken(Reading.of(nanos(seconds), value), value, best, 0.002, value / best, Trend.STEADY);
    }

    static ReadingTaken overRange(double seconds) {
        return new ReadingTaken(
                Reading.without(nanos(seconds), Condition.OVER_RANGE), 1, 1, Double.NaN, 1, Trend.STEADY);
    }

    static Adjuster begin(double seconds, String name, double before) {
        return new Adjuster(nanos(seconds), name, Adjuster.Action.BEGIN, before, Double.NaN, Double.NaN);
    }

    static Adjuster done(double seconds, String name, double before, double after, double gainDb) {
        return new Adjuster(nanos(seconds), name, Adjuster.Action.DONE, before, after, gainDb);
    }

    /** A line of the log whose words do not matter. */
    static LogEntry line(SessionRecord record) {
        return new LogEntry(record, "", "");
    }

    static LogEntry overload(double seconds) {
        Overload record = new Overload(nanos(seconds), Overload.Cause.OVER_RANGE, Double.NaN);
        return new LogEntry(record, "overload", "turn the generator down");
    }

    /** A line of which only the words are known. */
    static LogEntry told(double seconds, String topic, String text) {
        return new LogEntry(new Logged(nanos(seconds), Logged.Topic.TOLD, Double.NaN), topic, text);
    }

    static LogEntry plan(String name) {
        return line(new Work.PlanBegun(0, name));
    }

    static LogEntry safety(String text) {
        return line(new Said.Answer(0, text));
    }

    static long nanos(double seconds) {
        return Math.round(seconds * 1e9);
    }

    /** Two slugs, two rounds, one overload, safety answers and a response curve. */
    static SessionStory wholeJob(String name) {
        StoryTeller teller = teller(name);
        teller.take(plan("Tarnfield 54A"));
        teller.take(line(new Work.PathBegun(0, "AM IF")));
        teller.take(safety("chassis: mains transformer"));
        double t = 0;
        double level = 0.4;
        String[] names = {"T2 top", "T2 bottom", "T2 top", "T2 bottom"};
        double[] gains = {8.08, 1.04, 0.06, 0.02};
        for (int turn = 0; turn < 4; turn++) {
            double before = level;
            double best = before * Math.pow(10, gains[turn] / 20);
            teller.take(line(begin(t, names[turn], before)));
            for (int i = 0; i < 200; i++) {
                double x = (i - 120) / 60.0;
                t += 0.1;
                level = best / Math.sqrt(1 + x * x * (i > 120 ? 0.1 : 1));
                teller.take(line(reading(t, level, best)));
            }
            level = best;
            teller.take(line(done(t, names[turn], before, best, gains[turn])));
        }
        teller.take(overload(t));
        teller.take(overload(t));
        teller.take(line(new Work.DialNoted(nanos(t), 1.4e6, 38_000, false)));
        teller.take(line(new Work.DialNoted(nanos(t), 1.4e6, 0, true)));
        for (int kHz = -10; kHz <= 10; kHz++) {
            double x = kHz / 4.5;
            teller.take(line(new CurveWork.PointTaken(nanos(t), 455_000 + kHz * 1000, 1 / Math.sqrt(1 + x * x))));
        }
        teller.take(line(new SessionEnd(nanos(t), 800, EndReason.Known.DONE)));
        return teller.story("");
    }
}
