package org.slugpeak.bridge.log;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.SessionStart;

/**
 * Writes the logs that {@link GoldenLogTest} reads, except {@code every-kind-of-record.jsonl}, which is written by hand. Run once for each new version of the record format, into a new folder.
 */
final class GoldenLogs {

    private static final double READINGS_PER_SECOND = 10;

    private final SplittableRandom random = new SplittableRandom(54);
    private final Path folder;
    private long tNanos = 3_141_592_653L;

    private GoldenLogs(Path folder) {
        this.folder = folder;
    }

    /** Writes into the folder that is named. */
    public static void main(String[] arguments) throws Exception {
        GoldenLogs logs = new GoldenLogs(Path.of(arguments[0]));
        logs.firstIf();
        logs.discriminator();
        logs.overRangeAndUnplugged();
    }

    /** Up to the peak, past it, back and held; then the next slug. */
    private void firstIf() throws Exception {
        SessionStart start = start("/dev/ttyUSB0", Measurand.DC_VOLTS, Seek.PEAK);
        try (SessionLog log = create("tarnfield-54a-first-if.jsonl", start)) {
            Analysis analysis = new Analysis(start.settings(), log);
            turn(analysis, -2, 1, 8, false);
            turn(analysis, 1, 0, 3, false);
            turn(analysis, 0, 0, 4, false);
            analysis.note("T1 top, core flush with the former");
            analysis.nextAdjuster("T1 bottom");
            turn(analysis, -1, 0.5, 5, false);
            analysis.end(EndReason.Known.DONE);
        }
    }

    /** Through the zero of a discriminator and back. */
    private void discriminator() throws Exception {
        SessionStart start = start("sim:quillmere", Measurand.DC_VOLTS, Seek.ZERO);
        try (SessionLog log = create("quillmere-fm-8-discriminator.jsonl", start)) {
            Analysis analysis = new Analysis(start.settings(), log);
            turn(analysis, -1.5, 1.2, 8, true);
            turn(analysis, 1.2, 0, 4, true);
            turn(analysis, 0, 0, 4, true);
            analysis.end(EndReason.Known.DONE);
        }
    }

    /** A meter that runs out of range, is unplugged and comes back, until the power is cut. */
    private void overRangeAndUnplugged() throws Exception {
        SessionStart start = start("-", Measurand.UNKNOWN, Seek.PEAK);
        try (SessionLog log = create("tarnfield-54a-power-cut.jsonl", start)) {
            Analysis analysis = new Analysis(start.settings(), log);
            turn(analysis, -2, -0.5, 4, false);
            for (int i = 0; i < 5; i++) {
                analysis.reading(Reading.without(step(), Condition.OVER_RANGE));
            }
            turn(analysis, -0.5, 0.2, 3, false);
            analysis.link(step(), Link.State.LOST, new LinkDetail.Told("unplugged"));
            tNanos += 5_000_000_000L;
            analysis.link(tNanos, Link.State.RESUMED, new LinkDetail.Told("the same port"));
            analysis.reading(new Reading(step(), 4.095, Condition.FULL_SCALE));
            turn(analysis, 0.2, 0.8, 4, false);
        }
        Path file = folder.resolve("tarnfield-54a-power-cut.jsonl");
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 37));
    }

    private void turn(Analysis analysis, double from, double to, double seconds, boolean sCurve) {
        int steps = (int) (seconds * READINGS_PER_SECOND);
        for (int i = 1; i <= steps; i++) {
            double detuning = from + (to - from) * i / steps;
            double resonance = 1 / Math.sqrt(1 + 4 * detuning * detuning);
            double volts = sCurve ? 2 * detuning * resonance * resonance : 4 * resonance;
            double noise = 0.004 * (random.nextDouble() + random.nextDouble() - 1);
            analysis.reading(Reading.of(step(), Math.rint((volts + noise) * 1e4) / 1e4));
        }
    }

    private long step() {
        tNanos += (long) (1e9 / READINGS_PER_SECOND) + random.nextInt(-2_000_000, 2_000_000);
        return tNanos;
    }

    private SessionLog create(String name, SessionStart start) throws Exception {
        SessionLog log = SessionLog.create(folder.resolve(name), new TestWords(), GoldenLogs::refuse);
        log.take(start);
        return log;
    }

    private static SessionStart start(String source, Measurand measurand, Seek seek) {
        return new SessionStart(
                SessionStart.CURRENT_VERSION,
                Instant.parse("2026-11-25T08:30:00.125Z"),
                source,
                measurand,
                PeakSettings.defaults().withSeek(seek),
                "slugpeak 0.1.0");
    }

    private static void refuse(String warning) {
        throw new IllegalStateException(warning);
    }
}
