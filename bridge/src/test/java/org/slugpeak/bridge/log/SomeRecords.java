package org.slugpeak.bridge.log;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.steps.StepsBack;

/** Random records of every kind, with awkward numbers, times and texts. */
final class SomeRecords {

    private static final List<String> TEXTS = List.of(
            "",
            "first IF, top",
            "level: rest",
            "level: check rest",
            "  seek: dip",
            "steps: undo",
            "quote \" and backslash \\",
            "tab\tnewline\nnull\0bell\7",
            "\u00b5V \u03a9 \u2264",
            "\ud83d\udd27 with a surrogate pair",
            "\u2028\u2029\u0085",
            "{\"type\":\"reading\"}",
            "x".repeat(9_000));

    private final SplittableRandom random;

    SomeRecords(long seed) {
        random = new SplittableRandom(seed);
    }

    SessionRecord next() {
        return switch (random.nextInt(19)) {
            case 0 -> start();
            case 1 -> new Passed(nanos(), number(), nanos(), number(), back());
            case 2 -> new Returned(nanos(), number(), number());
            case 3 -> new Held(nanos(), number(), number());
            case 4 -> new TwoPeaks(nanos(), number(), number(), number());
            case 5 -> new NoPeak(nanos(), oneOf(NoPeakReason.values()));
            case 6 -> new Overload(nanos(), oneOf(Overload.Cause.values()), Double.NaN);
            case 7 -> new OverloadCleared(nanos());
            case 8 -> new Weak(nanos(), number());
            case 9 -> new Drift(nanos(), number(), text());
            case 10 -> new Link.Changed(nanos(), oneOf(Link.State.values()), new LinkDetail.Told(text()));
            case 11 -> new Said.Note(nanos(), text());
            case 12 -> new Adjuster(nanos(), text(), oneOf(Adjuster.Action.values()), number(), number(), number());
            case 13 -> advice();
            case 18 -> sheet();
            case 14 -> new SessionEnd(nanos(), random.nextLong(Long.MAX_VALUE), EndReason.ofCode(text()));
            default ->
                new ReadingTaken(
                        new Reading(nanos(), finite(), oneOf(Condition.values())),
                        number(),
                        number(),
                        number(),
                        number(),
                        oneOf(Trend.values()));
        };
    }

    private SessionRecord sheet() {
        FigureKind kind = oneOf(FigureKind.values());
        InputSetting setting =
                new InputSetting(number(), number(), random.nextBoolean(), number(), Handwork.NONE, Double.NaN);
        return switch (random.nextInt(3)) {
            case 0 ->
                new SheetWork.Begun(
                        nanos(), new Conditions(oneOf(Occasion.values()), number(), number(), text(), number()));
            case 1 ->
                new SheetWork.OutputTaken(
                        nanos(),
                        kind,
                        setting,
                        random.nextBoolean()
                                ? OutputReading.TOO_MUCH
                                : new OutputReading(finite(), Math.abs(finite()), Math.abs(finite())));
            default ->
                new SheetWork.FigureTaken(
                        nanos(),
                        new Figure(
                                kind,
                                number(),
                                number(),
                                number(),
                                oneOf(Limit.values()),
                                oneOf(Figure.Outcome.values())));
        };
    }

    /** Of what is written as advice what reads back whole. */
    private SessionRecord advice() {
        return switch (random.nextInt(11)) {
            case 0 -> new Finding.Hinted(nanos(), oneOf(Hint.values()), number());
            case 1 -> new Caution.Suspected(nanos(), oneOf(Suspicion.values()), number());
            case 2 -> new Caution.Checked(nanos(), oneOf(CheckKind.values()), CheckFigures.of(number()));
            case 3 -> new Work.PlanBegun(nanos(), text());
            case 4 -> new Said.Answer(nanos(), text());
            case 5 -> new Link.Broken(nanos(), oneOf(LinkNotice.values()), new LinkDetail.Told(text()));
            case 6 -> new CurveWork.PointTaken(nanos(), random.nextInt(1_000_000) + 0.125, number());
            case 10 -> new CurveWork.LawStep(nanos(), -3.0 * random.nextInt(6), number());
            case 7 -> new Work.DialNoted(nanos(), random.nextInt(1_000_000) + 0.125, number(), random.nextBoolean());
            case 8 -> new Said.Command(nanos(), new Instruction.Level(LevelCommand.check(oneOf(CheckKind.values()))));
            default -> new Request.CutGenerator(nanos(), number(), Double.NaN);
        };
    }

    SessionStart start() {
        return new SessionStart(
                SessionStart.CURRENT_VERSION,
                Instant.ofEpochSecond(random.nextLong(4_000_000_000L), random.nextInt(1_000_000_000)),
                text(),
                new Measurand(text(), text()),
                new PeakSettings(oneOf(Seek.values()), Duration.ofNanos(1 + random.nextLong(100_000_000_000L))),
                text(),
                random.nextBoolean());
    }

    private Optional<StepsBack> back() {
        return random.nextBoolean()
                ? Optional.of(new StepsBack(number(), number(), number(), number()))
                : Optional.empty();
    }

    /** Any time but the most negative long. */
    long nanos() {
        return switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> random.nextLong(-2_000_000_000L, 2_000_000_000L);
            case 2 -> random.nextLong(10) * 1_000_000_000L;
            case 3 -> random.nextBoolean() ? Long.MAX_VALUE : -Long.MAX_VALUE;
            case 4 -> Math.max(-Long.MAX_VALUE, random.nextLong() >> random.nextInt(60));
            default -> random.nextLong(100_000) * 20_000_000L;
        };
    }

    /** Any double that may stand in a record: finite or NaN. */
    double number() {
        return random.nextInt(5) == 0 ? Double.NaN : finite();
    }

    double finite() {
        double any = switch (random.nextInt(6)) {
            case 0 -> Double.longBitsToDouble(random.nextLong());
            case 1 -> Double.longBitsToDouble(random.nextLong() & 0x800fffffffffffffL);
            case 2 -> random.nextInt(2000) / 100.0;
            case 3 ->
                new double[] {0.0, -0.0, Double.MIN_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, 2e-3, 2.0e-3f}
                        [random.nextInt(7)];
            case 4 -> random.nextInt(-100_000, 100_000);
            default -> random.nextDouble(-10, 10);
        };
        return Double.isFinite(any) ? any : 1.0;
    }

    String text() {
        return TEXTS.get(random.nextInt(TEXTS.size()));
    }

    <T> T oneOf(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
