package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.rehearsal.SettledOutput;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Untimed;
import org.slugpeak.core.sheet.InputReach;
import org.slugpeak.core.sheet.SheetPlan;
import org.slugpeak.core.sheet.SheetProgress;
import org.slugpeak.core.sheet.Station;

/**
 * A sheet filled by hand at a set that is made up from its plan; each figure is held against the truth as it is taken. Where the attenuator
 * errs, the truth of (S+N)/N is that at the level which really was at the set, as it is at the input of the sensitivity by definition.
 */
final class SheetRun {

    private static final double REFERENCE_VOLTS = 0.4;
    private static final double STRONGEST_VOLTS = 0.1;
    private static final double LONGEST_SECONDS = 20_000;

    /**
     * A figure and the truth.
     *
     * @param figure as measured
     * @param truth in the unit of the figure
     */
    record Held(Figure figure, double truth) {

        /** How far off, in dB, or a part of the width. */
        double off() {
            return switch (figure.kind().counts()) {
                case VOLTS_EMF -> Decibels.of(figure.value() / truth);
                case DECIBELS -> figure.value() - truth;
                case HERTZ -> figure.value() / truth - 1;
                case RATIO -> figure.value() - truth;
            };
        }

        /** How far off in standard deviations. */
        double pull() {
            boolean width = figure.kind().counts() == FigureKind.Counts.HERTZ;
            return (width ? figure.value() - truth : off()) / figure.sigma();
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s at %.0f kHz: %.5g, truly %.5g, off %.3f, pull %.1f",
                    figure.kind().code(),
                    figure.dialHz() / 1e3,
                    figure.value(),
                    truth,
                    off(),
                    pull());
        }
    }

    private final PlannedSet set;
    private final ErringAttenuator attenuator;
    private final UnaryOperator<SessionRecord> dial;
    private final List<Station> stations;
    private final SimSource source;
    private final SheetProgress progress;
    private final Analysis analysis;
    private final List<Held> held = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private double ratioInputVolts = Double.NaN;
    private long lastNanos;
    private int settings;

    private SheetRun(
            PlannedSet set,
            Plan plan,
            long seed,
            ErringAttenuator attenuator,
            InputReach reach,
            UnaryOperator<SessionRecord> dial) {
        this.dial = dial;
        this.set = set;
        this.attenuator = attenuator;
        stations = SheetPlan.of(plan, MeterPoint.VOICE_COIL);
        source = SimSource.measuring(set, plan.name(), MeterPoint.VOICE_COIL, seed, Tempo.unlimited());
        Conditions conditions = new Conditions(Occasion.BEFORE, REFERENCE_VOLTS, 3.2, "200 pF", attenuator.mostDb());
        progress = new SheetProgress(stations, conditions, reach);
        analysis = new Analysis(PeakSettings.defaults(), this::take);
    }

    static SheetRun of(Plan plan, PlannedSet set, long seed) throws BridgeException {
        return of(plan, set, seed, ErringAttenuator.TRUE);
    }

    static SheetRun of(Plan plan, PlannedSet set, long seed, ErringAttenuator attenuator) throws BridgeException {
        return over(new SheetRun(set, plan, seed, attenuator, InputReach.BY_HAND, record -> record));
    }

    /** By a hand that has only its generator's dial to go by. */
    static SheetRun of(Plan plan, PlannedSet set, long seed, ErringDial dial, InputReach reach) throws BridgeException {
        return over(new SheetRun(set, plan, seed, ErringAttenuator.TRUE, reach, dial::fed));
    }

    private static SheetRun over(SheetRun run) throws BridgeException {
        Feed feed = run.new Feed();
        while (!run.progress.isOver()
                && run.lastNanos < LONGEST_SECONDS * 1e9
                && run.source.poll(0, feed) != Progress.ENDED) {
            // The feed does it all.
        }
        return run;
    }

    boolean isOver() {
        return progress.isOver();
    }

    int settings() {
        return settings;
    }

    /** Those with a value that is no bound. */
    List<Held> held() {
        return List.copyOf(held);
    }

    List<Figure> figures() {
        return List.copyOf(figures);
    }

    private void take(SessionRecord record) {
        lastNanos = record.tNanos();
        progress.take(record);
        source.hand().take(dial.apply(attenuator.fed(record)));
        if (record instanceof SheetWork.OutputTaken taken) {
            settings++;
            boolean first = taken.kind() == FigureKind.SIGNAL_TO_NOISE && Double.isNaN(ratioInputVolts);
            ratioInputVolts = first ? attenuator.realVolts(taken.setting().emfVolts()) : ratioInputVolts;
        }
        if (record instanceof SheetWork.FigureTaken taken) {
            figures.add(taken.figure());
            if (taken.figure().outcome() == Figure.Outcome.MEASURED) {
                held.add(new Held(taken.figure(), truth(taken.figure())));
            }
            ratioInputVolts = taken.figure().kind() == FigureKind.SIGNAL_TO_NOISE ? Double.NaN : ratioInputVolts;
        }
    }

    private double truth(Figure figure) {
        SettledOutput settled = set.settledOutput();
        double hz = figure.dialHz();
        double dialHz = set.dialHz();
        Station station = stations.stream()
                .filter(each -> each.dialHz() == hz)
                .findFirst()
                .orElseThrow();
        return switch (figure.kind()) {
            case SENSITIVITY -> settled.emfVolts(hz, REFERENCE_VOLTS, dialHz);
            case SIGNAL_TO_NOISE -> settled.signalToNoiseDb(hz, ratioInputVolts, dialHz);
            case INPUT_FOR_TEN_DB ->
                root(emf -> settled.signalToNoiseDb(hz, emf, dialHz) - 10, figure.value() / 30, figure.value() * 30);
            case IMAGE_REJECTION -> rejection(settled, station.receiver().imageHz(hz), hz, dialHz);
            case IF_REJECTION -> rejection(settled, station.receiver().intermediateHz(), hz, dialHz);
            case WIDTH_6_DB -> width(settled, hz, dialHz, 6);
            case WIDTH_20_DB -> width(settled, hz, dialHz, 20);
            case WIDTH_40_DB -> width(settled, hz, dialHz, 40);
            case AVC -> avc(settled, hz, dialHz);
            case HUM -> settled.signalToNoiseDb(hz, STRONGEST_VOLTS, dialHz);
            case DISTORTION -> throw new IllegalArgumentException("such a set distorts nothing");
        };
    }

    private static double rejection(SettledOutput settled, double nearHz, double hz, double dialHz) {
        double top = settled.topHz(nearHz, dialHz);
        return Decibels.of(
                settled.emfVolts(top, REFERENCE_VOLTS, dialHz) / settled.emfVolts(hz, REFERENCE_VOLTS, dialHz));
    }

    private static double width(SettledOutput settled, double hz, double dialHz, double lossDb) {
        double reference = settled.emfVolts(hz, REFERENCE_VOLTS, dialHz);
        DoubleUnaryOperator loss =
                at -> Decibels.of(settled.emfVolts(at, REFERENCE_VOLTS, dialHz) / reference) - lossDb;
        return side(off -> loss.applyAsDouble(hz + off)) + side(off -> loss.applyAsDouble(hz - off));
    }

    /** The outermost crossing within 40 kHz. */
    private static double side(DoubleUnaryOperator loss) {
        double off = 40e3;
        while (off > 250 && loss.applyAsDouble(off - 250) > 0) {
            off -= 250;
        }
        return root(loss, off - 250, off);
    }

    private static double avc(SettledOutput settled, double hz, double dialHz) {
        double strongest = settled.voiceCoilVolts(hz, STRONGEST_VOLTS, true, dialHz);
        double emf = root(
                db -> Decibels.of(settled.voiceCoilVolts(hz, Decibels.ratio(db), true, dialHz) / strongest) + 10,
                -140,
                -20);
        return Decibels.of(STRONGEST_VOLTS) - emf;
    }

    private static double root(DoubleUnaryOperator rising, double low, double high) {
        double from = low;
        double to = high;
        for (int i = 0; i < 60; i++) {
            double middle = (from + to) / 2;
            if (rising.applyAsDouble(middle) > 0) {
                to = middle;
            } else {
                from = middle;
            }
        }
        return (from + to) / 2;
    }

    /** Lets the sheet lead after each reading. */
    private final class Feed extends AnalysisListener {

        Feed() {
            super(analysis);
        }

        @Override
        public void reading(Reading reading) {
            super.reading(reading);
            for (Optional<Untimed> news = progress.nextNews(); news.isPresent(); news = progress.nextNews()) {
                analysis.tell(news.get());
            }
        }

        @Override
        public void typed(TypedWord word) {
            progress.next();
        }

        @Override
        public void garbled(String where, String problem) {
            throw new AssertionError(problem);
        }
    }
}
