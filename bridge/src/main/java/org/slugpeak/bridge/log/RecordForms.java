package org.slugpeak.bridge.log;

import static org.slugpeak.bridge.log.Column.count;
import static org.slugpeak.bridge.log.Column.flag;
import static org.slugpeak.bridge.log.Column.number;
import static org.slugpeak.bridge.log.Column.seconds;
import static org.slugpeak.bridge.log.Column.sentence;
import static org.slugpeak.bridge.log.Column.t;
import static org.slugpeak.bridge.log.Column.text;
import static org.slugpeak.bridge.log.Column.word;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.steps.StepsBack;
import org.slugpeak.core.word.Refused;

/**
 * The format, version 1, kind by kind: whatever is written or read stands here and nowhere else. Kinds without a type of their own
 * are {@link AdviceTopics}. Immutable.
 */
final class RecordForms {

    private static final Map<String, NoPeakReason> REASONS = byCode(NoPeakReason.values(), NoPeakReason::code);
    private static final Map<String, Trend> TRENDS = byCode(Trend.values(), Trend::code);

    final RecordForm<SessionStart> start = RecordForm.of(
            "session",
            RecordForms::start,
            count("version", SessionStart::version),
            text("startedAt", it -> it.startedAt().toString()),
            text("source", SessionStart::source),
            text("quantity", it -> it.measurand().quantity()),
            text("unit", it -> it.measurand().unit()),
            word(
                    "seek",
                    codes(Seek.values(), Seek::code),
                    it -> it.settings().seek().code()),
            seconds("dwell", it -> it.settings().dwell().toNanos()),
            text("tool", SessionStart::tool),
            flag("stepped", SessionStart::stepped));

    /** {@link ReadingLine} writes it, being quicker. */
    final RecordForm<ReadingTaken> reading = RecordForm.of(
            "reading",
            RecordForms::reading,
            t(ReadingTaken::tNanos),
            number(
                    "value",
                    Unit.AS_READ,
                    it -> it.reading().condition().hasValue() ? it.reading().value() : Double.NaN),
            number("smoothed", Unit.AS_READ, ReadingTaken::smoothed),
            number("best", Unit.AS_READ, ReadingTaken::best),
            number("bestSigma", Unit.AS_READ, ReadingTaken::bestSigma),
            number("ofBest", Unit.RATIO, ReadingTaken::ofBest),
            word("trend", codes(Trend.values(), Trend::code), it -> it.trend().code()),
            word(
                    "condition",
                    codes(Condition.values(), Condition::code),
                    it -> it.reading().condition().code()));

    final RecordForm<Passed> passed = RecordForm.of(
            "passed",
            row -> new Passed(row.nanos(), row.number(), row.nanos(), row.number(), stepsBack(row)),
            t(Passed::tNanos),
            number("best", Unit.AS_READ, Passed::best),
            seconds("bestAt", Passed::bestAtNanos),
            number("dropDb", Unit.DECIBELS, Passed::dropDb),
            number(
                            "stepsBack",
                            Unit.STEPS,
                            (Passed it) -> it.back().orElseThrow().steps())
                    .where(RecordForms::isStepped),
            number(
                            "stepsError",
                            Unit.STEPS,
                            (Passed it) -> it.back().orElseThrow().stepsError())
                    .where(RecordForms::isStepped),
            number("top", Unit.AS_READ, (Passed it) -> it.back().orElseThrow().top())
                    .where(RecordForms::isStepped),
            number(
                            "topError",
                            Unit.AS_READ,
                            (Passed it) -> it.back().orElseThrow().topError())
                    .where(RecordForms::isStepped));

    final RecordForm<Returned> returned = RecordForm.of(
            "returned",
            row -> new Returned(row.nanos(), row.number(), row.number()),
            t(Returned::tNanos),
            number("value", Unit.AS_READ, Returned::value),
            number("lossDb", Unit.DECIBELS, Returned::lossDb));

    final RecordForm<Held> held = RecordForm.of(
            "held",
            row -> new Held(row.nanos(), row.number(), row.number()),
            t(Held::tNanos),
            number("value", Unit.AS_READ, Held::value),
            number("lossDb", Unit.DECIBELS, Held::lossDb));

    final RecordForm<TwoPeaks> twoPeaks = RecordForm.of(
            "two-peaks",
            row -> new TwoPeaks(row.nanos(), row.number(), row.number(), row.number()),
            t(TwoPeaks::tNanos),
            number("first", Unit.AS_READ, TwoPeaks::first),
            number("second", Unit.AS_READ, TwoPeaks::second),
            number("dipDb", Unit.DECIBELS, TwoPeaks::dipDb));

    final RecordForm<NoPeak> noPeak = RecordForm.of(
            "no-peak",
            row -> new NoPeak(row.nanos(), row.word(REASONS)),
            t(NoPeak::tNanos),
            word(
                    "reason",
                    codes(NoPeakReason.values(), NoPeakReason::code),
                    it -> it.reason().code()));

    final RecordForm<Overload> overload;

    final RecordForm<OverloadCleared> overloadCleared =
            RecordForm.of("overload-cleared", row -> new OverloadCleared(row.nanos()), t(OverloadCleared::tNanos));

    final RecordForm<Weak> weak;

    final RecordForm<Drift> drift = RecordForm.of(
            "drift",
            row -> new Drift(row.nanos(), row.number(), row.text()),
            t(Drift::tNanos),
            number("perMinute", Unit.OTHER_FIELD, Drift::perMinute),
            text("unit", Drift::unit));

    final RecordForm<Link.Changed> link;

    final RecordForm<MarkLine> mark = RecordForm.of(
            "mark", row -> new MarkLine(row.nanos(), row.text()), t(MarkLine::tNanos), text("text", MarkLine::text));

    final RecordForm<Adjuster> adjuster = RecordForm.of(
            "adjuster",
            row -> new Adjuster(
                    row.nanos(),
                    row.text(),
                    row.coded(Adjuster.Action.class),
                    row.number(),
                    row.number(),
                    row.number()),
            t(Adjuster::tNanos),
            text("name", Adjuster::name),
            word(
                    "action",
                    codes(Adjuster.Action.values(), Adjuster.Action::code),
                    it -> it.action().code()),
            number("before", Unit.AS_READ, Adjuster::before),
            number("after", Unit.AS_READ, Adjuster::after),
            number("gainDb", Unit.DECIBELS, Adjuster::gainDb));

    final RecordForm<AdviceLine> advice = RecordForm.of(
            "advice",
            row -> new AdviceLine(row.nanos(), row.text(), row.text(), row.number()),
            t(AdviceLine::tNanos),
            text("topic", AdviceLine::topic),
            sentence("text", AdviceLine::text),
            number("amount", Unit.BY_TOPIC, AdviceLine::amount));

    final RecordForm<SheetWork.Begun> sheet = RecordForm.of(
            "sheet",
            row -> new SheetWork.Begun(
                    row.nanos(),
                    new Conditions(row.coded(Occasion.class), row.number(), row.number(), row.text(), row.number())),
            t(SheetWork.Begun::tNanos),
            word(
                    "occasion",
                    codes(Occasion.values(), Occasion::code),
                    it -> it.conditions().occasion().code()),
            number("reference", Unit.AS_READ, it -> it.conditions().referenceVolts()),
            number("load", Unit.OHM, it -> it.conditions().loadOhms()),
            text("aerial", it -> it.conditions().aerial()),
            number("attenuator", Unit.DECIBELS, it -> it.conditions().attenuatorDb()));

    final RecordForm<SheetWork.OutputTaken> output = RecordForm.of(
            "sheet-output",
            RecordForms::output,
            t(SheetWork.OutputTaken::tNanos),
            word(
                    "figure",
                    codes(FigureKind.values(), FigureKind::code),
                    it -> it.kind().code()),
            number("dial", Unit.HERTZ, it -> it.setting().dialHz()),
            number("generator", Unit.HERTZ, it -> it.setting().frequencyHz()),
            number("input", Unit.VOLTS_EMF, it -> it.setting().emfVolts()),
            flag("modulated", it -> it.setting().modulated()),
            number("value", Unit.AS_READ, it -> finite(it.output().volts())),
            number("sigma", Unit.AS_READ, it -> it.output().noiseVolts()),
            number("digit", Unit.AS_READ, it -> it.output().digitVolts()));

    final RecordForm<SheetWork.FigureTaken> figure = RecordForm.of(
            "figure",
            row -> new SheetWork.FigureTaken(
                    row.nanos(),
                    new Figure(
                            row.coded(FigureKind.class),
                            row.number(),
                            row.number(),
                            row.number(),
                            row.coded(Limit.class),
                            row.coded(Figure.Outcome.class))),
            t(SheetWork.FigureTaken::tNanos),
            word(
                    "figure",
                    codes(FigureKind.values(), FigureKind::code),
                    it -> it.figure().kind().code()),
            number("dial", Unit.HERTZ, it -> it.figure().dialHz()),
            number("value", Unit.BY_FIGURE, it -> it.figure().value()),
            number("sigma", Unit.BY_FIGURE, it -> it.figure().sigma()),
            word(
                    "limit",
                    codes(Limit.values(), Limit::code),
                    it -> it.figure().limit().code()),
            word(
                    "outcome",
                    codes(Figure.Outcome.values(), Figure.Outcome::code),
                    it -> it.figure().outcome().code()));

    final RecordForm<SessionEnd> end = RecordForm.of(
            "end",
            row -> new SessionEnd(row.nanos(), row.count(), EndReason.ofCode(row.text())),
            t(SessionEnd::tNanos),
            count("readings", SessionEnd::readings),
            text("reason", it -> it.reason().code()));

    /** The forms, with the words for the sentences that some of them keep. */
    RecordForms(Sentences sentences) {
        overload = RecordForm.of(
                "overload",
                RecordForms::overload,
                t(Overload::tNanos),
                word(
                        "cause",
                        codes(Overload.Cause.values(), Overload.Cause::code),
                        it -> it.cause().code()),
                sentence("advice", sentences::of));
        weak = RecordForm.of(
                "weak",
                RecordForms::weak,
                t(Weak::tNanos),
                number("snrDb", Unit.DECIBELS, Weak::snrDb),
                sentence("advice", sentences::of));
        link = RecordForm.of(
                "link",
                row -> new Link.Changed(row.nanos(), row.coded(Link.State.class), new LinkDetail.Told(row.text())),
                t(Link.Changed::tNanos),
                word(
                        "state",
                        codes(Link.State.values(), Link.State::code),
                        it -> it.state().code()),
                text("detail", it -> sentences.of(it, it.detail())));
    }

    /** All of them, in the order of the documentation. */
    List<RecordForm<?>> all() {
        return List.of(
                start,
                reading,
                passed,
                returned,
                held,
                twoPeaks,
                noPeak,
                overload,
                overloadCleared,
                weak,
                drift,
                link,
                mark,
                adjuster,
                advice,
                sheet,
                output,
                figure,
                end);
    }

    private static SessionStart start(FieldRow row) throws BadLine {
        long version = row.count();
        if (version > SessionStart.CURRENT_VERSION) {
            throw new NewerVersion("is in record version " + version + ", and this slugpeak reads up to version "
                    + SessionStart.CURRENT_VERSION);
        }
        return new SessionStart(
                (int) version,
                Instant.parse(row.text()),
                row.text(),
                new Measurand(row.text(), row.text()),
                new PeakSettings(seek(row), dwell(row)),
                row.text(),
                row.flag());
    }

    private static Seek seek(FieldRow row) throws BadLine {
        try {
            return Seek.ofCode(row.text());
        } catch (Refused e) {
            throw BadLine.impossible(e.reason());
        }
    }

    private static Duration dwell(FieldRow row) throws BadLine {
        if (row.hasNext()) {
            Duration dwell = Duration.ofNanos(row.nanos());
            if (dwell.isNegative() || dwell.isZero()) {
                throw BadLine.impossible("the dwell must be positive, not " + dwell);
            }
            return dwell;
        }
        row.skip();
        return PeakSettings.defaults().dwell();
    }

    private static ReadingTaken reading(FieldRow row) throws BadLine {
        long tNanos = row.nanos();
        double value = row.number();
        double smoothed = row.number();
        double best = row.number();
        double bestSigma = row.number();
        double ofBest = row.number();
        Trend trend = row.word(TRENDS);
        Condition condition = row.coded(Condition.class);
        if (condition.hasValue() && !Double.isFinite(value)) {
            throw BadLine.impossible("a reading's value must be finite, not " + value);
        }
        Reading reading = new Reading(tNanos, condition.hasValue() ? value : 0, condition);
        return new ReadingTaken(reading, smoothed, best, bestSigma, ofBest, trend);
    }

    private static boolean isStepped(Passed it) {
        return it.back().isPresent();
    }

    private static Optional<StepsBack> stepsBack(FieldRow row) throws BadLine {
        return row.hasNext()
                ? Optional.of(new StepsBack(row.number(), row.number(), row.number(), row.number()))
                : Optional.empty();
    }

    /** The slope stands in the sentence only. */
    private static Overload overload(FieldRow row) throws BadLine {
        Overload overload = new Overload(row.nanos(), row.coded(Overload.Cause.class), Double.NaN);
        row.text();
        return overload;
    }

    private static Weak weak(FieldRow row) throws BadLine {
        Weak weak = new Weak(row.nanos(), row.number());
        row.text();
        return weak;
    }

    /** What is beyond meter or set has no number. */
    private static SheetWork.OutputTaken output(FieldRow row) throws BadLine {
        long tNanos = row.nanos();
        FigureKind kind = row.coded(FigureKind.class);
        double dialHz = row.number();
        InputSetting setting =
                new InputSetting(row.number(), row.number(), row.flag(), dialHz, Handwork.NONE, Double.NaN);
        double volts = row.number();
        OutputReading read = new OutputReading(volts, row.number(), row.number());
        return new SheetWork.OutputTaken(tNanos, kind, setting, Double.isNaN(volts) ? OutputReading.TOO_MUCH : read);
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : Double.NaN;
    }

    private static <E> List<String> codes(E[] values, Function<E, String> code) {
        return Stream.of(values).map(code).toList();
    }

    private static <E> Map<String, E> byCode(E[] values, Function<E, String> code) {
        return Stream.of(values).collect(Collectors.toUnmodifiableMap(code, Function.identity()));
    }
}
