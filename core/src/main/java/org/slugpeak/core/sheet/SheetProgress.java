package org.slugpeak.core.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.function.Supplier;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.receiver.Superhet;
import org.slugpeak.core.scale.ScaleEstimate;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.Untimed;

/**
 * Leads through a receiver's sheet, one setting of the generator after the other. It hears every record of the session, says what is to be
 * set, waits until the reading stands, and gives the figures. Where a person sets anything, it waits for a word that it is set.
 *
 * <pre>
 *   PREPARING --set up--&gt; CHECKING --rest known--&gt; SETTING --set, and stands--&gt; SETTING the next ... OVER
 * </pre>
 *
 * <p>One thread at a time.
 */
public final class SheetProgress implements RecordSink {

    /** Of the intermediate frequency: about a third of how wide a strip is (made up; two critical pairs of Q 70). */
    private static final double STEP_SHARE = 0.005;

    private enum Phase {
        PREPARING,
        CHECKING,
        SETTING,
        OVER
    }

    private final Conditions conditions;
    private final InputReach reach;
    private final Queue<Supplier<List<SheetTask>>> ahead = new ArrayDeque<>();
    private final Queue<SheetTask> tasks = new ArrayDeque<>();
    private final Queue<Untimed> news = new ArrayDeque<>();
    private final OutputWatch watch = new OutputWatch();
    private final DistortionWatch tone = new DistortionWatch();
    private final HeardScale heard = new HeardScale();
    private final Hearing hearing = new Hearing();
    private Optional<Setup> connected = Optional.empty();
    private Optional<InputSetting> asked = Optional.empty();
    private Phase phase = Phase.SETTING;
    private double dialHz;
    private boolean confirmed;
    private boolean stands;
    private boolean checking;
    private boolean rested;

    /**
     * A sheet of which nothing is measured yet.
     *
     * @param stations where it is measured, one or more
     * @param conditions what it is measured under
     * @param reach of the generator
     */
    public SheetProgress(List<Station> stations, Conditions conditions, InputReach reach) {
        this.conditions = conditions;
        this.reach = reach;
        stations.forEach(this::plan);
        news.add(at -> new SheetWork.Begun(at, conditions));
    }

    private void plan(Station station) {
        AtDial dial = new AtDial(station, conditions, reach);
        ahead.add(() -> {
            prepare(station.setup());
            dialHz = station.dialHz();
            return List.of(new SensitivityTask(dial));
        });
        ahead.add(() -> dial.sensitivity().map(found -> at(dial, found)).orElseGet(() -> {
            missing(station);
            return List.of();
        }));
    }

    private List<SheetTask> at(AtDial dial, FoundInput found) {
        Station station = dial.station();
        Superhet receiver = station.receiver();
        double stepHz = Rounded.toDigits(STEP_SHARE * station.narrowestHz(), 1);
        List<SheetTask> all = new ArrayList<>();
        if (conditions.isPower()) {
            all.add(new NoiseTask(dial, found));
        }
        double imageHz = receiver.imageHz(station.dialHz());
        if (station.wants(FigureKind.IMAGE_REJECTION) && imageHz > 0) {
            all.add(new RejectionTask(dial, found, FigureKind.IMAGE_REJECTION, imageHz, stepHz));
        }
        if (station.wants(FigureKind.IF_REJECTION)) {
            all.add(new RejectionTask(dial, found, FigureKind.IF_REJECTION, receiver.intermediateHz(), stepHz));
        }
        if (station.wants(FigureKind.WIDTH_6_DB)) {
            all.add(new SelectivityTask(dial, found, stepHz));
        }
        if (station.wants(FigureKind.AVC)) {
            all.add(new AvcTask(dial));
        }
        return all;
    }

    /** Without a sensitivity nothing can be held against it. */
    private void missing(Station station) {
        station.wanted().forEach(kind -> tell(Figure.missing(kind, station.dialHz())));
    }

    private void prepare(Setup setup) {
        if (connected.equals(Optional.of(setup))) {
            return;
        }
        boolean first = connected.isEmpty();
        boolean moves = connected.map(before -> !setup.hasLeadsOf(before)).orElse(false);
        connected = Optional.of(setup);
        phase = Phase.PREPARING;
        Preparation what = new Preparation(Optional.of(setup), first, moves, Optional.empty(), Optional.empty());
        news.add(at -> new Request.SetUp(at, what));
    }

    private void tell(Figure figure) {
        news.add(at -> new SheetWork.FigureTaken(at, figure));
    }

    /**
     * What is to be told now, in order; asked after each record.
     *
     * @return empty while something is waited for
     */
    public Optional<Untimed> nextNews() {
        while (news.isEmpty() && phase == Phase.SETTING && asked.isEmpty()) {
            goOn();
        }
        return Optional.ofNullable(news.poll());
    }

    private void goOn() {
        Optional<InputSetting> next =
                tasks.isEmpty() ? Optional.empty() : tasks.element().next();
        if (next.isPresent()) {
            asked = next;
            confirmed = false;
            stands = !reach.obeys();
            forget();
            boolean unasked = !isByHand(next.get());
            Optional<ScaleEstimate> mark = reach.mark(next.get().frequencyHz());
            news.add(at -> new Request.SetInput(at, next.get(), unasked, mark));
        } else if (!tasks.isEmpty()) {
            conclude();
        } else if (!ahead.isEmpty()) {
            tasks.addAll(ahead.remove().get());
        } else {
            phase = Phase.OVER;
            news.add(SheetWork.SheetOver::new);
        }
    }

    /** Of the task at hand: its figures, and those that it should have given. */
    private void conclude() {
        SheetTask task = tasks.remove();
        List<Figure> figures = task.figures();
        figures.forEach(this::tell);
        task.kinds().stream()
                .filter(kind -> figures.stream().noneMatch(figure -> figure.kind() == kind))
                .forEach(kind -> tell(Figure.missing(kind, dialHz)));
    }

    /**
     * The check that has to begin now, once.
     *
     * @return the resting reading, where the meter stands at a detector
     */
    public Optional<CheckKind> takeCheck() {
        boolean due = phase == Phase.CHECKING && !checking;
        checking = checking || due;
        return due ? Optional.of(CheckKind.REST) : Optional.empty();
    }

    /**
     * Whether every figure was seen to.
     *
     * @return true after the last
     */
    public boolean isOver() {
        return phase == Phase.OVER;
    }

    /** The user says that it is done: what was asked stands. */
    public void next() {
        if (phase == Phase.PREPARING) {
            phase = conditions.isPower() || rested ? Phase.SETTING : Phase.CHECKING;
        } else if (asked.isPresent()) {
            confirmed = true;
            forget();
        }
    }

    /**
     * The frequency that a hand is to set the generator to.
     *
     * @return Hz; empty where nothing is to be set by hand, or the generator is tuned by the reading
     */
    public OptionalDouble wantedHz() {
        return asked.filter(it -> !reach.obeys() && it.handwork() != Handwork.TUNE_GENERATOR)
                .map(it -> OptionalDouble.of(it.frequencyHz()))
                .orElse(OptionalDouble.empty());
    }

    /** The user leaves out the measurement at hand. */
    public void skip() {
        if (asked.isPresent()) {
            asked = Optional.empty();
            conclude();
        }
    }

    @Override
    public void take(SessionRecord record) {
        heard.take(record);
        record.tellFamily(hearing);
    }

    /** What moves the sheet on. */
    private final class Hearing implements FamilyListener {

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken && asked.isPresent() && isSet(asked.get())) {
                Reading reading = taken.reading();
                double above = Math.abs(heard.scale().aboveRest(reading.value()));
                watch.see(reading, above).ifPresent(output -> read(asked.get(), output));
            }
        }

        @Override
        public void sound(Sound it) {
            if (it instanceof Sound.Purity purity) {
                tone.hear(purity);
            } else if (it instanceof Sound.NoTone) {
                tone.forget();
            }
        }

        @Override
        public void request(Request it) {
            if (it instanceof Request.GeneratorStands real && isFor(asked, real)) {
                stands = true;
                asked = asked.map(wanted -> wanted.standingAt(real.hz(), real.emfVolts()));
                forget();
            } else if (it instanceof Request.GeneratorFails) {
                stands = false;
            } else if (it instanceof Request.CheckOver || it instanceof Request.CheckDropped) {
                rested = true;
                phase = phase == Phase.CHECKING ? Phase.SETTING : phase;
            }
        }
    }

    private void forget() {
        watch.forget();
        tone.forget();
    }

    private static boolean isFor(Optional<InputSetting> asked, Request.GeneratorStands real) {
        return real.emfVolts() != 0
                && asked.filter(it -> Math.abs(real.hz() / it.frequencyHz() - 1) < STEP_SHARE)
                        .isPresent();
    }

    private boolean isByHand(InputSetting setting) {
        return !reach.obeys() || setting.handwork().isAtSet();
    }

    private boolean isSet(InputSetting setting) {
        return stands && (confirmed || !isByHand(setting));
    }

    private void read(InputSetting setting, OutputReading output) {
        SheetTask task = tasks.element();
        asked = Optional.empty();
        news.add(at -> new SheetWork.OutputTaken(at, task.kinds().get(0), setting, output));
        tone.distortion().ifPresent(task::hear);
        task.take(setting, output);
    }
}
