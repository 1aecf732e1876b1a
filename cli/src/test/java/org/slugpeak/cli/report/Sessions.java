package org.slugpeak.cli.report;

import java.time.Instant;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionStart;

/** Sessions written by hand. */
final class Sessions {

    private Sessions() {}

    static StoryTeller teller(String name) {
        return new StoryTeller(
                name,
                new SessionStart(
                        1,
                        Instant.parse("2026-11-25T09:00:00Z"),
                        "sim:tarnfield",
                        Measurand.DC_VOLTS,
                        PeakSettings.defaults(),
                        "slugpeak 0.1.0"));
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

    static Advice advice(double seconds, String topic, String text, double amount) {
        return new Advice(nanos(seconds), topic, text, amount);
    }

    static long nanos(double seconds) {
        return Math.round(seconds * 1e9);
    }

    /** Two slugs, two rounds, one overload, safety answers and a response curve. */
    static SessionStory wholeJob(String name) {
        StoryTeller teller = teller(name);
        teller.take(advice(0, "plan", "Tarnfield 54A", Double.NaN));
        teller.take(advice(0, "safety", "chassis: mains transformer", Double.NaN));
        double t = 0;
        double level = 0.4;
        String[] names = {"T2 top", "T2 bottom", "T2 top", "T2 bottom"};
        double[] gains = {8.08, 1.04, 0.06, 0.02};
        for (int turn = 0; turn < 4; turn++) {
            double before = level;
            double best = before * Math.pow(10, gains[turn] / 20);
            teller.take(begin(t, names[turn], before));
            for (int i = 0; i < 200; i++) {
                double x = (i - 120) / 60.0;
                t += 0.1;
                level = best / Math.sqrt(1 + x * x * (i > 120 ? 0.1 : 1));
                teller.take(reading(t, level, best));
            }
            level = best;
            teller.take(done(t, names[turn], before, best, gains[turn]));
        }
        teller.take(new Overload(nanos(t), Overload.Cause.OVER_RANGE, "turn the generator down"));
        teller.take(new Overload(nanos(t), Overload.Cause.OVER_RANGE, "turn the generator down"));
        teller.take(advice(t, "dial-before", "1400000", 38_000));
        teller.take(advice(t, "dial-after", "1400000", 0));
        for (int kHz = -10; kHz <= 10; kHz++) {
            double x = kHz / 4.5;
            teller.take(advice(t, "curve-point", Double.toString(455_000 + kHz * 1000), 1 / Math.sqrt(1 + x * x)));
        }
        teller.take(new SessionEnd(nanos(t), 800, "done"));
        return teller.story("");
    }
}
