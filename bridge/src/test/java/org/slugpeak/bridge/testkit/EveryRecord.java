package org.slugpeak.bridge.testkit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.AvcLine;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.scale.ScaleEstimate;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Guard;
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
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.signal.ClippingCause;
import org.slugpeak.core.steps.StepsBack;

/** One record of every kind that a session makes, and where a kind has a few shapes, one of each. All figures are made up. */
public final class EveryRecord {

    private static final long T = 1_500_000_000L;
    private static final StepsBack BACK = new StepsBack(1.4, 0.2, 0.875, 0.01);

    private EveryRecord() {}

    /**
     * All of them.
     *
     * @return in the order of the families
     */
    public static List<SessionRecord> list() {
        return Stream.of(frame(), findings(), cautions(), requests(), work(), sheet(), plan(), link(), said(), sound())
                .flatMap(List::stream)
                .toList();
    }

    private static List<SessionRecord> frame() {
        Measurand volts = Measurand.DC_VOLTS;
        return List.of(
                new SessionStart(1, Instant.EPOCH, "sim", volts, PeakSettings.defaults(), "slugpeak test"),
                new ReadingTaken(Reading.of(T, 1), 1, 1, 0.01, 1, Trend.STEADY),
                new SessionEnd(T, 1, EndReason.Known.DONE));
    }

    private static List<SessionRecord> findings() {
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Passed(T, 1, T, 0.2),
                new Passed(T, 1, T, 0.2, Optional.of(BACK)),
                new Returned(T, 1, 0),
                new Held(T, 1, 0),
                new TwoPeaks(T, 1, 0.9, 3),
                new NoPeak(T, NoPeakReason.FLAT),
                new Finding.FurtherPast(T, BACK),
                new Finding.FurtherPast(T, new StepsBack(1.4, 0.05, 0.875, 0.01))));
        Stream.of(Hint.values()).forEach(hint -> all.add(new Finding.Hinted(T, hint, 1.25)));
        return all;
    }

    private static List<SessionRecord> cautions() {
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Overload(T, Overload.Cause.OVER_RANGE, Double.NaN),
                new Overload(T, Overload.Cause.FULL_SCALE, Double.NaN),
                new Overload(T, Overload.Cause.CLIPPING, Double.NaN),
                new Overload(T, Overload.Cause.FLATTENING, 0.61),
                new Overload(T, Overload.Cause.FLATTENING, 0.41),
                new OverloadCleared(T),
                new Weak(T, 12),
                new Drift(T, -0.3, "dB"),
                new Caution.Settled(T, 0.03),
                new Caution.WidePeak(T, 2.3),
                new Caution.RestMissing(T),
                new Caution.SlowReadings(T, 1.2),
                new Caution.WindowMissed(T, -7.5),
                new Caution.WindowMissed(T, 4)));
        for (Suspicion suspicion : Suspicion.values()) {
            all.add(new Caution.Suspected(T, suspicion, 0.5));
            all.add(new Caution.NoLongerSuspected(T, suspicion));
        }
        Stream.of(CheckKind.values())
                .forEach(check -> all.add(new Caution.Checked(T, check, new CheckFigures(1.25, 3, 1.75, 5e3))));
        all.add(new Caution.Checked(T, CheckKind.LEVEL, CheckFigures.of(1.5)));
        all.add(new Caution.Checked(T, CheckKind.SKIRTS, new CheckFigures(0.2, 3.2, 3, 5e3)));
        all.add(new Caution.Checked(T, CheckKind.SKIRTS, new CheckFigures(-3, 3, 6, 500)));
        all.add(new Caution.Checked(T, CheckKind.SKIRTS, new CheckFigures(0.2, -1, -1.2, 5e3)));
        return all;
    }

    private static List<SessionRecord> requests() {
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Request.CutGenerator(T, 0.5, Double.NaN),
                new Request.CutGenerator(T, 0.25, Double.NaN),
                new Request.CutGenerator(T, 0.5, -0.92),
                new Request.GeneratorChanged(T, -6.02),
                new Request.GeneratorUnchanged(T),
                new Request.CheckOver(T),
                new Request.CheckDropped(T, 25),
                new Request.HandsOff(T, false),
                new Request.HandsOff(T, true),
                new Request.SetGenerator(T, 455e3, 2, 31, true, Optional.empty()),
                new Request.SetGenerator(
                        T, 455e3, 2, 31, true, Optional.of(new ScaleEstimate(452_376, 500, Double.NaN))),
                new Request.SetGenerator(T, 455e3, 2, 31, false, Optional.empty()),
                new Request.GeneratorStands(T, 455e3, 1e-4),
                new Request.GeneratorStands(T, 455e3, 0),
                new Request.GeneratorStands(T, 1.4e6, Double.NaN),
                new Request.GeneratorFails(
                        T, true, "SG-30 on /dev/ttyUSB1 has gone: plug it in again with the set OFF and unplugged"),
                new Request.GeneratorFails(T, false, "SG-30 does not go to 98 MHz")));
        for (CheckKind check : CheckKind.values()) {
            for (int move = 0; move <= check.moves(); move++) {
                all.add(new Request.Asked(T, check, move));
            }
        }
        all.add(new Request.Asked(T, CheckKind.SKIRTS, 0, 500, Double.NaN));
        all.add(new Request.Asked(T, CheckKind.SKIRTS, 1, 500, Double.NaN));
        all.add(new Request.Asked(T, CheckKind.IMAGE, 0, 5e3, 15.09e6));
        return all;
    }

    private static Setup setup(HighTension highTension) {
        return new Setup(
                OptionalDouble.of(455e3),
                "400 Hz, 30 %",
                "converter grid",
                "200 pF",
                OptionalDouble.of(16e6),
                "gang open",
                "detector",
                Optional.of(new LevelRange(0.5, 1.5, "V")),
                highTension);
    }

    private static PlanStep step(Goal goal, boolean rock, List<String> notes) {
        Setup setup = setup(HighTension.POSSIBLE);
        return new PlanStep("T1 top", goal, setup, rock, Optional.empty(), Acceptance.MAXIMUM, notes);
    }

    private static List<SessionRecord> plan() {
        Optional<Setup> high = Optional.of(setup(HighTension.POSSIBLE));
        Optional<Setup> low = Optional.of(setup(new HighTension(false, false)));
        Optional<Damping> one = Optional.of(new Damping("T1 bottom", 22e3));
        Optional<Damping> other = Optional.of(new Damping("T1 top", 4.7e3, false));
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Request.SetUp(T, new Preparation(high, true, false, Optional.empty(), Optional.empty())),
                new Request.SetUp(T, new Preparation(low, false, true, Optional.empty(), one)),
                new Request.SetUp(T, new Preparation(high, false, false, one, one)),
                new Request.SetUp(T, new Preparation(Optional.empty(), false, false, one, other)),
                new Request.SetUp(T, new Preparation(Optional.empty(), false, false, other, Optional.empty())),
                new Request.Undamp(T, one.get()),
                new Request.Undamp(T, other.get())));
        for (Goal goal : Goal.values()) {
            all.add(new Request.Turn(T, step(goal, false, List.of())));
            if (goal != Goal.ZERO_BEAT && goal != Goal.CRYSTAL) {
                all.add(new Request.Turn(T, step(goal, true, List.of("gently", "from outside"))));
            }
        }
        all.addAll(particular());
        return all;
    }

    /** What only some plans say: each kind of point, what stands on the gain control line, each side of the oscillator. */
    private static List<SessionRecord> particular() {
        List<SessionRecord> all = new ArrayList<>();
        List<Setup> setups = new ArrayList<>();
        for (MeterPoint point : MeterPoint.values()) {
            setups.add(particular(OscillatorSide.ABOVE, "", point, AvcLine.FREE));
        }
        setups.add(particular(OscillatorSide.ABOVE, "AVC pin", MeterPoint.AVC, AvcLine.FREE));
        setups.add(particular(OscillatorSide.ABOVE, "", MeterPoint.DETECTOR, AvcLine.heldAt(-3)));
        setups.add(particular(OscillatorSide.ABOVE, "", MeterPoint.DETECTOR, AvcLine.heldAt(0)));
        for (Setup setup : setups) {
            all.add(new Request.SetUp(
                    T, new Preparation(Optional.of(setup), false, true, Optional.empty(), Optional.empty())));
        }
        for (OscillatorSide side : OscillatorSide.values()) {
            Setup setup = particular(side, "", MeterPoint.DETECTOR, AvcLine.FREE);
            for (boolean rock : new boolean[] {false, true}) {
                all.add(new Request.Turn(
                        T,
                        new PlanStep(
                                "C5",
                                rock ? Goal.PEAK : Goal.ON_DIAL,
                                setup,
                                rock,
                                Optional.empty(),
                                Acceptance.MAXIMUM,
                                true,
                                List.of("gently"))));
            }
        }
        return all;
    }

    private static Setup particular(OscillatorSide side, String meter, MeterPoint point, AvcLine line) {
        Band band = new Band("SW", 5.8e6, 18.2e6, Optional.of(side), TuningElement.PERMEABILITY);
        IntermediateFrequency intermediate = new IntermediateFrequency("first", 1.6e6);
        return new Setup(
                OptionalDouble.of(12e6),
                "none",
                "aerial",
                "400 ohm",
                OptionalDouble.of(12e6),
                "",
                meter,
                Optional.empty(),
                new HighTension(false, false),
                new Particulars(
                        Optional.of(band),
                        Optional.of(intermediate),
                        point == MeterPoint.AVC,
                        Optional.of(point),
                        Optional.of(line)));
    }

    private static List<SessionRecord> sheet() {
        Conditions heard = new Conditions(Occasion.BEFORE, 0.4, 3.2, "200 pF", 1);
        InputSetting setting = new InputSetting(1e6, 3.5e-5, true, 1e6, Handwork.NONE, 0.4);
        InputSetting carrier = new InputSetting(1e6, 3.5e-5, false, 1e6, Handwork.NONE, 0.4);
        List<SessionRecord> all = new ArrayList<>(List.of(
                new SheetWork.Begun(T, heard),
                new SheetWork.Begun(T, new Conditions(Occasion.AFTER, 1, Double.NaN, "", Double.NaN)),
                new SheetWork.OutputTaken(T, FigureKind.SENSITIVITY, setting, new OutputReading(0.39, 1e-3, 1e-5)),
                new SheetWork.OutputTaken(T, FigureKind.HUM, carrier, OutputReading.TOO_MUCH),
                new SheetWork.SheetOver(T)));
        Stream.of(Handwork.values())
                .forEach(each -> all.add(new Request.SetInput(T, setting.with(each), false, Optional.empty())));
        all.add(new Request.SetInput(T, carrier, false, Optional.empty()));
        all.add(new Request.SetInput(T, carrier, true, Optional.empty()));
        all.add(new Request.SetInput(T, carrier, false, Optional.of(new ScaleEstimate(998e3, 500, 120))));
        Iterator<Limit> limits = Stream.generate(() -> Stream.of(Limit.values()))
                .flatMap(each -> each)
                .iterator();
        for (FigureKind kind : FigureKind.values()) {
            double value = switch (kind.counts()) {
                case VOLTS_EMF -> 3.5e-5;
                case DECIBELS -> 41.26;
                case HERTZ -> 8740;
                case RATIO -> 0.034;
            };
            double sigma = kind.counts() == FigureKind.Counts.HERTZ ? 60 : 0.08;
            all.add(new SheetWork.FigureTaken(
                    T, new Figure(kind, 1e6, value, sigma, limits.next(), Figure.Outcome.MEASURED)));
        }
        all.add(new SheetWork.FigureTaken(T, Figure.missing(FigureKind.AVC, 1e6)));
        all.add(new SheetWork.FigureTaken(
                T, new Figure(FigureKind.IF_REJECTION, 1e6, 62, 0, Limit.NOISE, Figure.Outcome.AT_LEAST)));
        all.add(new SheetWork.FigureTaken(
                T, new Figure(FigureKind.SENSITIVITY, 1e6, 1.2e-3, 0, Limit.NOISE, Figure.Outcome.AT_MOST)));
        return all;
    }

    private static List<SessionRecord> work() {
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Adjuster(T, "T1 top", Adjuster.Action.BEGIN, 1, Double.NaN, Double.NaN),
                new Work.PlanBegun(T, "Tarnfield 54A"),
                new Guard.StillShort(T, 0.42),
                new Guard.StillShort(T, Double.NaN),
                new Guard.BegunAgain(T),
                new Guard.TwoMaxima(T, 3),
                new Guard.Choice(T),
                new Guard.EndOfTravel(T),
                new Guard.LateGain(T, "T1 top", 2, 2.4),
                new Guard.ClampGainControl(T),
                new Work.PathBegun(T, "MW, 1400 kHz"),
                new Work.HandEffect(T, -0.4),
                new Work.Swept(T, -0.25),
                new Work.WentBack(T),
                new Work.PlanOver(T),
                new CurveWork.PointTaken(T, 455e3, 0.5),
                new CurveWork.PointLeftOut(T, 455e3),
                new CurveWork.LawStep(T, -3, 0.4),
                new CurveWork.CurveOver(T),
                new Work.DialNoted(T, 1.4e6, -500, false),
                new Work.DialNoted(T, 1.4e6, 20, true),
                new Work.NothingToTakeBack(T)));
        Stream.of(RoundVerdict.values())
                .forEach(verdict -> all.add(new Work.RoundEnded(T, "AM IF", 2, 0.254, verdict)));
        all.add(new Work.RoundEnded(T, "MW", 1, Double.NaN, RoundVerdict.AGAIN));
        return all;
    }

    private static List<SessionRecord> link() {
        List<SessionRecord> all = new ArrayList<>(List.of(
                new Link.Changed(T, Link.State.LOST, new LinkDetail.Told("unplugged")),
                new Link.NotAReading(T, "line 7", "is no number", 3),
                new Link.LeftOut(T, 12),
                new Link.LowBattery(T),
                new Link.UnitTold(T, "mV"),
                new Link.LogGap(T, 1),
                new Link.LogGap(T, 700)));
        Stream.of(LinkNotice.values())
                .forEach(notice -> all.add(new Link.Broken(T, notice, new LinkDetail.Told("it was reset"))));
        return all;
    }

    private static List<SessionRecord> said() {
        return List.of(
                new Said.Note(T, "core flush with the former"),
                new Said.Command(T, new Instruction.Level(LevelCommand.cut(0.5))),
                new Said.Command(T, new Instruction.Find(Seek.DIP)),
                new Said.Command(T, new Instruction.TakeBack()),
                new Said.Answer(T, "chassis: transformer"),
                new Said.Counted(T, 456_200, 455_000, false),
                new Said.Counted(T, 455_020, 455_000, false),
                new Said.Counted(T, 453_800, 455_000, false),
                new Said.Counted(T, 453_800, 454_000, true));
    }

    private static List<SessionRecord> sound() {
        return List.of(
                new Sound.Tone(T, 400, 0.05, 16),
                new Sound.NoTone(T),
                new Sound.PerhapsHum(T, Double.NaN),
                new Sound.PerhapsHum(T, 50),
                new Sound.HumUnderTone(T, 8, 50, 0.12),
                new Sound.Purity(T, 32.5, 0.021, Double.NaN),
                new Sound.Purity(T, 32.5, 0.021, 41),
                new Sound.Distorted(T, 0.13),
                new Sound.OutputReached(T, 50, 55.1),
                new Sound.Clips(T, ClippingCause.INPUT),
                new Sound.Clips(T, ClippingCause.SET));
    }
}
