package org.slugpeak.bridge.log;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Work;

/**
 * The kinds of record that version 1 writes as advice: topic, what the amount counts in, what stands as text, and what is made of it
 * when it is read. A kind whose figures version 1 has in its sentence only is read as {@link Logged}. Immutable.
 */
final class AdviceTopics {

    private final Sentences sentences;
    private final Map<String, AdviceTopic<?>> byWord = new LinkedHashMap<>();

    final Map<Hint, AdviceTopic<Finding.Hinted>> hints = new EnumMap<>(Hint.class);
    final AdviceTopic<Finding.FurtherPast> furtherPast;

    final AdviceTopic<Caution.Settled> settled;
    final Map<Suspicion, AdviceTopic<Caution.Suspected>> suspicions = new EnumMap<>(Suspicion.class);
    final AdviceTopic<Caution.NoLongerSuspected> noLongerSuspected;
    final AdviceTopic<Caution.WidePeak> widePeak;
    final AdviceTopic<Caution.RestMissing> restMissing;
    final AdviceTopic<Caution.SlowReadings> slowReadings;
    final AdviceTopic<Caution.WindowMissed> windowMissed;
    final Map<CheckKind, AdviceTopic<Caution.Checked>> checks = new EnumMap<>(CheckKind.class);

    final AdviceTopic<Request.Asked> asked;
    final AdviceTopic<Request.CutGenerator> cutGenerator;
    final AdviceTopic<Request.GeneratorChanged> generatorChanged;
    final AdviceTopic<Request.GeneratorUnchanged> generatorUnchanged;
    final AdviceTopic<Request.CheckOver> checkOver;
    final AdviceTopic<Request.CheckDropped> checkDropped;
    final AdviceTopic<Request.SetUp> setUp;
    final AdviceTopic<Request.SetUp> damping;
    final AdviceTopic<Request.Undamp> undamp;
    final AdviceTopic<Request.Turn> turn;
    final AdviceTopic<Request.HandsOff> handsOff;
    final AdviceTopic<Request.SetGenerator> setGenerator;
    final AdviceTopic<Request.SetInput> setInput;
    final AdviceTopic<Request.GeneratorStands> generatorStands;
    final AdviceTopic<Request.GeneratorFails> generatorGone;
    final AdviceTopic<Request.GeneratorFails> generatorFails;

    final AdviceTopic<Work.PlanBegun> planBegun;
    final AdviceTopic<Work.PathBegun> pathBegun;
    final AdviceTopic<Guard.StillShort> stillShort;
    final AdviceTopic<Guard.BegunAgain> begunAgain;
    final AdviceTopic<Guard.TwoMaxima> twoMaxima;
    final AdviceTopic<Guard.Choice> choice;
    final AdviceTopic<Guard.EndOfTravel> endOfTravel;
    final AdviceTopic<Guard.LateGain> lateGain;
    final AdviceTopic<Guard.ClampGainControl> clampGainControl;
    final AdviceTopic<Work.HandEffect> handEffect;
    final AdviceTopic<Work.Swept> swept;
    final AdviceTopic<Work.RoundEnded> roundEnded;
    final AdviceTopic<Work.WentBack> wentBack;
    final AdviceTopic<Work.PlanOver> planOver;
    final AdviceTopic<CurveWork.PointTaken> pointTaken;
    final AdviceTopic<CurveWork.PointLeftOut> pointLeftOut;
    final AdviceTopic<CurveWork.LawStep> lawStep;
    final AdviceTopic<CurveWork.CurveOver> curveOver;
    final AdviceTopic<SheetWork.SheetOver> sheetOver;
    final AdviceTopic<Work.DialNoted> dialBefore;
    final AdviceTopic<Work.DialNoted> dialAfter;
    final AdviceTopic<Work.NothingToTakeBack> nothingToTakeBack;

    final Map<LinkNotice, AdviceTopic<Link.Broken>> notices = new EnumMap<>(LinkNotice.class);
    final AdviceTopic<Link.NotAReading> notAReading;
    final AdviceTopic<Link.LeftOut> leftOut;
    final AdviceTopic<Link.LowBattery> lowBattery;
    final AdviceTopic<Link.UnitTold> unitTold;
    final AdviceTopic<Link.LogGap> logGap;

    final AdviceTopic<Said.Answer> answer;
    final AdviceTopic<Said.Counted> counted;
    final AdviceTopic<Said.Counted> countedPoint;

    final AdviceTopic<Sound.Tone> tone;
    final AdviceTopic<Sound.NoTone> noTone;
    final AdviceTopic<Sound.PerhapsHum> perhapsHum;
    final AdviceTopic<Sound.HumUnderTone> humUnderTone;
    final AdviceTopic<Sound.Purity> purity;
    final AdviceTopic<Sound.Distorted> distorted;
    final AdviceTopic<Sound.OutputReached> outputReached;
    final AdviceTopic<Sound.Clips> clips;

    AdviceTopics(Sentences sentences) {
        this.sentences = sentences;
        for (Hint hint : Hint.values()) {
            hints.put(
                    hint,
                    said(
                            hint.code(),
                            Finding.Hinted::amount,
                            unit(hint),
                            it -> new Finding.Hinted(it.tNanos(), hint, it.amount())));
        }
        furtherPast = said("steps-back", it -> it.back().steps(), Unit.STEPS, AdviceTopics::told);

        settled = said(
                "settled",
                Caution.Settled::dbPerMinute,
                Unit.DECIBELS_PER_MINUTE,
                it -> new Caution.Settled(it.tNanos(), it.amount()));
        for (Suspicion suspicion : Suspicion.values()) {
            suspicions.put(
                    suspicion,
                    said(
                            "possible-" + suspicion.code(),
                            Caution.Suspected::amount,
                            Unit.BY_CHECK,
                            it -> new Caution.Suspected(it.tNanos(), suspicion, it.amount())));
        }
        noLongerSuspected = said("no-longer-possible", AdviceTopics::none, Unit.NONE, AdviceTopics::told);
        widePeak = said(
                "wide-peak", Caution.WidePeak::times, Unit.RATIO, it -> new Caution.WidePeak(it.tNanos(), it.amount()));
        restMissing = said("no-rest", AdviceTopics::none, Unit.NONE, it -> new Caution.RestMissing(it.tNanos()));
        slowReadings = said(
                "slow-readings",
                Caution.SlowReadings::intervalSeconds,
                Unit.SECONDS,
                it -> new Caution.SlowReadings(it.tNanos(), it.amount()));
        windowMissed = said(
                "window-missed",
                Caution.WindowMissed::missedDb,
                Unit.DECIBELS,
                it -> new Caution.WindowMissed(it.tNanos(), it.amount()));
        for (CheckKind check : CheckKind.values()) {
            checks.put(
                    check,
                    said(
                            word(check),
                            it -> it.figures().figure(),
                            unit(check),
                            it -> new Caution.Checked(it.tNanos(), check, CheckFigures.of(it.amount()))));
        }

        asked = said("ask", AdviceTopics::none, Unit.NONE, as(Logged.Topic.ASKED));
        cutGenerator = said(
                "cut-generator",
                Request.CutGenerator::factor,
                Unit.RATIO,
                it -> new Request.CutGenerator(it.tNanos(), it.amount(), Double.NaN));
        generatorChanged = said(
                "generator-changed",
                Request.GeneratorChanged::changeDb,
                Unit.DECIBELS,
                it -> new Request.GeneratorChanged(it.tNanos(), it.amount()));
        generatorUnchanged = said(
                "generator-unchanged",
                AdviceTopics::none,
                Unit.NONE,
                it -> new Request.GeneratorUnchanged(it.tNanos()));
        checkOver = said("check-over", AdviceTopics::none, Unit.NONE, it -> new Request.CheckOver(it.tNanos()));
        checkDropped = said("check-dropped", AdviceTopics::none, Unit.NONE, AdviceTopics::told);
        setUp = said("set-up", AdviceTopics::fittedOhms, Unit.OHM, AdviceTopics::told);
        damping = said("damping", AdviceTopics::fittedOhms, Unit.OHM, AdviceTopics::told);
        undamp = said("damping", it -> it.damping().ohms(), Unit.OHM, AdviceTopics::told);
        turn = said("turn", AdviceTopics::none, Unit.NONE, as(Logged.Topic.TURN));
        handsOff = said("hands-off", AdviceTopics::none, Unit.NONE, as(Logged.Topic.HANDS_OFF));
        setGenerator = said("set-generator", Request.SetGenerator::hz, Unit.HERTZ, as(Logged.Topic.SET_GENERATOR));
        setInput = said("set-input", it -> it.setting().emfVolts(), Unit.VOLTS_EMF, as(Logged.Topic.SET_GENERATOR));
        generatorStands = add(new AdviceTopic<>(
                "generator-stands",
                Request.GeneratorStands::emfVolts,
                Unit.VOLTS_EMF,
                it -> String.format(Locale.ROOT, "%.3f", it.hz()),
                it -> figure(it, hz -> new Request.GeneratorStands(it.tNanos(), hz, it.amount()))));
        generatorGone = kept(
                "generator-gone",
                Request.GeneratorFails::detail,
                it -> new Request.GeneratorFails(it.tNanos(), true, it.text()));
        generatorFails = kept(
                "generator-fails",
                Request.GeneratorFails::detail,
                it -> new Request.GeneratorFails(it.tNanos(), false, it.text()));

        planBegun = kept("plan", Work.PlanBegun::name, it -> new Work.PlanBegun(it.tNanos(), it.text()));
        pathBegun = kept("path", Work.PathBegun::path, it -> new Work.PathBegun(it.tNanos(), it.text()));
        stillShort = guard(AdviceTopics::none);
        begunAgain = guard(AdviceTopics::none);
        twoMaxima = guard(Guard.TwoMaxima::dipDb);
        choice = guard(AdviceTopics::none);
        endOfTravel = guard(AdviceTopics::none);
        lateGain = guard(Guard.LateGain::gainDb);
        clampGainControl = guard(AdviceTopics::none);
        handEffect = said(
                "hand-effect",
                Work.HandEffect::changeDb,
                Unit.DECIBELS,
                it -> new Work.HandEffect(it.tNanos(), it.amount()));
        swept = said("sweep", Work.Swept::belowBestDb, Unit.DECIBELS, it -> new Work.Swept(it.tNanos(), it.amount()));
        roundEnded = said("round", Work.RoundEnded::gainDb, Unit.DECIBELS, AdviceTopics::told);
        wentBack = said("back", AdviceTopics::none, Unit.NONE, it -> new Work.WentBack(it.tNanos()));
        planOver = said("plan-over", AdviceTopics::none, Unit.NONE, it -> new Work.PlanOver(it.tNanos()));
        pointTaken = add(new AdviceTopic<>(
                "curve-point",
                CurveWork.PointTaken::level,
                Unit.AS_READ,
                it -> String.format(Locale.ROOT, "%.3f", it.hz()),
                it -> figure(it, hz -> new CurveWork.PointTaken(it.tNanos(), hz, it.amount()))));
        pointLeftOut = said("no-signal", AdviceTopics::none, Unit.NONE, AdviceTopics::told);
        lawStep = add(new AdviceTopic<>(
                "law-step",
                CurveWork.LawStep::level,
                Unit.AS_READ,
                it -> String.format(Locale.ROOT, "%.3f", it.generatorDb()),
                it -> figure(it, db -> new CurveWork.LawStep(it.tNanos(), db, it.amount()))));
        curveOver = said("curve-over", AdviceTopics::none, Unit.NONE, it -> new CurveWork.CurveOver(it.tNanos()));
        sheetOver = said("sheet-over", AdviceTopics::none, Unit.NONE, it -> new SheetWork.SheetOver(it.tNanos()));
        dialBefore = dial("dial-before", false);
        dialAfter = dial("dial-after", true);
        nothingToTakeBack =
                said("nothing-to-undo", AdviceTopics::none, Unit.NONE, it -> new Work.NothingToTakeBack(it.tNanos()));

        for (LinkNotice notice : LinkNotice.values()) {
            notices.put(
                    notice,
                    kept(
                            notice.code(),
                            it -> sentences.of(it, it.detail()),
                            it -> new Link.Broken(it.tNanos(), notice, new LinkDetail.Told(it.text()))));
        }
        notAReading = said("not-a-reading", Link.NotAReading::count, Unit.COUNT, AdviceTopics::told);
        leftOut = said("not-a-reading", Link.LeftOut::count, Unit.COUNT, AdviceTopics::told);
        lowBattery = said("low-battery", AdviceTopics::none, Unit.NONE, it -> new Link.LowBattery(it.tNanos()));
        unitTold = said("unit", AdviceTopics::none, Unit.NONE, AdviceTopics::told);
        logGap = said("log-gap", Link.LogGap::lost, Unit.COUNT, AdviceTopics::told);

        counted = counted("counter", false);
        countedPoint = counted("counter-point", true);
        answer = kept("safety", Said.Answer::text, it -> new Said.Answer(it.tNanos(), it.text()));

        tone = said("tone", Sound.Tone::hz, Unit.HERTZ, AdviceTopics::told);
        noTone = said("tone", AdviceTopics::none, Unit.HERTZ, AdviceTopics::told);
        perhapsHum = said("hum", AdviceTopics::none, Unit.DECIBELS, AdviceTopics::told);
        humUnderTone = said("hum", Sound.HumUnderTone::errorDb, Unit.DECIBELS, AdviceTopics::told);
        purity = said("audio", Sound.Purity::sinadDb, Unit.DECIBELS, AdviceTopics::told);
        distorted = said("distortion", Sound.Distorted::distortion, Unit.RATIO, AdviceTopics::told);
        outputReached = said("output", Sound.OutputReached::milliwatts, Unit.MILLIWATTS, AdviceTopics::told);
        clips = said("clipping", AdviceTopics::none, Unit.NONE, AdviceTopics::told);
    }

    /** The topic of one of several that are alike. */
    static <K, T extends SessionRecord> AdviceTopic<T> of(Map<K, AdviceTopic<T>> byKind, K kind) {
        AdviceTopic<T> topic = byKind.get(kind);
        if (topic == null) {
            throw new IllegalStateException("no topic for " + kind);
        }
        return topic;
    }

    /** Each topic once, in the order of the documentation. */
    Collection<AdviceTopic<?>> all() {
        return byWord.values();
    }

    /** What a line means; one with a topic that is not known here is kept for its words. */
    SessionRecord record(AdviceLine line) {
        AdviceTopic<?> topic = byWord.get(line.topic());
        return topic == null ? told(line) : topic.maker().apply(line);
    }

    private <T extends SessionRecord> AdviceTopic<T> said(
            String word, ToDoubleFunction<T> amount, Unit unit, Function<AdviceLine, SessionRecord> maker) {
        return add(new AdviceTopic<>(word, amount, unit, sentences::of, maker));
    }

    private <T extends SessionRecord> AdviceTopic<T> kept(
            String word, Function<T, String> text, Function<AdviceLine, SessionRecord> maker) {
        return add(new AdviceTopic<>(word, AdviceTopics::none, Unit.NONE, text, maker));
    }

    private <T extends SessionRecord> AdviceTopic<T> guard(ToDoubleFunction<T> amount) {
        return said("guard", amount, Unit.DECIBELS, AdviceTopics::told);
    }

    private AdviceTopic<Work.DialNoted> dial(String word, boolean after) {
        return add(new AdviceTopic<>(
                word,
                Work.DialNoted::errorHz,
                Unit.HERTZ,
                it -> BigDecimal.valueOf(it.signalHz()).stripTrailingZeros().toPlainString(),
                it -> figure(it, hz -> new Work.DialNoted(it.tNanos(), hz, it.amount(), after))));
    }

    private AdviceTopic<Said.Counted> counted(String word, boolean taken) {
        return add(new AdviceTopic<>(
                word,
                Said.Counted::hz,
                Unit.HERTZ,
                it -> BigDecimal.valueOf(it.wantedHz()).stripTrailingZeros().toPlainString(),
                it -> figure(it, wantedHz -> new Said.Counted(it.tNanos(), it.amount(), wantedHz, taken))));
    }

    private <T extends SessionRecord> AdviceTopic<T> add(AdviceTopic<T> topic) {
        byWord.putIfAbsent(topic.word(), topic);
        return topic;
    }

    private static SessionRecord told(AdviceLine line) {
        return as(Logged.Topic.TOLD).apply(line);
    }

    private static Function<AdviceLine, SessionRecord> as(Logged.Topic topic) {
        return line -> new Logged(line.tNanos(), topic, line.amount());
    }

    /** A figure that stands as text. */
    private static SessionRecord figure(AdviceLine line, Function<Double, SessionRecord> maker) {
        try {
            return maker.apply(Double.parseDouble(line.text()));
        } catch (NumberFormatException damaged) {
            return new Logged(line.tNanos(), Logged.Topic.DAMAGED, line.amount());
        }
    }

    private static double none(SessionRecord any) {
        return Double.NaN;
    }

    private static double fittedOhms(Request.SetUp it) {
        return it.what().wanted().map(damping -> damping.ohms()).orElse(Double.NaN);
    }

    private static Unit unit(Hint hint) {
        return switch (hint) {
            case NEGATIVE_GOING -> Unit.AS_READ;
            case WRONG_WAY, BEST_AGED, STOPPED_SHORT, SIGNAL_BACK -> Unit.DECIBELS;
            case SIGNAL_GONE, TURN_SLOWER -> Unit.RATIO;
        };
    }

    private static String word(CheckKind check) {
        return switch (check) {
            case LEVEL -> "level-check";
            case OTHER_IF -> "if-centre";
            case REST, LOADING, EFFECT, SKIRTS, HARMONIC, IMAGE, DETECTOR_LAW -> check.code();
        };
    }

    private static Unit unit(CheckKind check) {
        return switch (check) {
            case REST -> Unit.AS_READ;
            case LEVEL, DETECTOR_LAW -> Unit.RATIO;
            case LOADING -> Unit.OHM;
            case OTHER_IF -> Unit.KILOHERTZ;
            case EFFECT, SKIRTS, HARMONIC, IMAGE -> Unit.DECIBELS;
        };
    }
}
