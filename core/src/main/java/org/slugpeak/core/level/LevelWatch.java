package org.slugpeak.core.level;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.level.CheckJudge.Following;
import org.slugpeak.core.level.StepCheck.Level;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.word.Coded;

/**
 * Keeps the level right, from the readings and the user's commands alone: the same readings and commands give the same events.
 * It says which readings the peak finder may see, and on which scale: above the resting voltage, as if the generator had
 * never been changed since the adjuster was begun, and as a straight detector would show them once the law of this one is known.
 *
 * <p>One thread at a time; time comes with the readings.
 */
public final class LevelWatch {

    private final LevelListener listener;
    private final boolean seeksStrongest;
    private final ConditionWatch conditions;
    private final GeneratorWatch generator;
    private final NoiseWatch noise;
    private final DriftWatch drift;
    private final JumpWatch jumps = new JumpWatch();
    private final WidthWatch widths = new WidthWatch();
    private final CheckJudge judge;
    private final Standing standing;

    private final MeterScale meter = new MeterScale();
    private Optional<StepCheck> check = Optional.empty();
    private double skirtHz = CheckFigures.USUAL_SKIRT_HZ;
    private double imageDialHz = Double.NaN;
    private String adjuster = "";
    private boolean doubtSaid;
    private Following following = Following.GOOD;
    private boolean zeroMoved;

    /**
     * A watch that has seen nothing yet.
     *
     * @param seek what is turned for; noise and drift are watched where the strongest signal is sought
     * @param listener hears what there is to say
     */
    public LevelWatch(Seek seek, LevelListener listener) {
        this.listener = listener;
        this.seeksStrongest = seek.seeksStrongest();
        this.conditions = new ConditionWatch(listener);
        this.generator = new GeneratorWatch(listener, meter);
        this.noise = new NoiseWatch(listener);
        this.drift = new DriftWatch(listener);
        this.standing = new Standing(listener);
        this.judge = new CheckJudge(listener, standing);
    }

    /**
     * Takes one reading, before the finder does.
     *
     * @param tNanos when it was read
     * @param value as read, in the unit of the readings; ignored where the condition is not trusted
     * @param condition how far it can be believed
     */
    public void accept(long tNanos, double value, Condition condition) {
        condition(tNanos, condition);
        if (!condition.isTrusted()) {
            return;
        }
        if (generator.isAwaited()) {
            passiveGap();
            return;
        }
        if (check.isPresent()) {
            check.get().accept(tNanos, value);
            endCheck(tNanos);
            return;
        }
        boolean wasStepping = generator.isStepping();
        generator.accept(tNanos, meter.aboveRest(value), meter.rest());
        if (generator.isStepping()) {
            passiveGap();
        } else {
            if (wasStepping && following == Following.REFUSED) {
                following = Following.GOOD;
                judge.follows(tNanos);
                listener.cleared(tNanos);
            }
            watchPassively(tNanos, Math.abs(meter.straight(value)));
        }
    }

    /**
     * Takes how far a reading can be believed, and nothing else of it.
     *
     * @param tNanos when it was read
     * @param condition how far it can be believed
     */
    public void condition(long tNanos, Condition condition) {
        conditions.see(tNanos, condition);
    }

    private void watchPassively(long tNanos, double magnitude) {
        if (!seeksStrongest) {
            return;
        }
        noise.accept(tNanos, magnitude);
        drift.accept(tNanos, magnitude);
        if (!generator.isArmed(tNanos) && jumps.accept(tNanos, magnitude)) {
            standing.raise(tNanos, Suspicion.MICA, Double.NaN);
        }
    }

    private void passiveGap() {
        widths.gap();
        noise.gap();
        drift.gap();
        jumps.gap();
    }

    private void endCheck(long tNanos) {
        if (check.isPresent() && check.get().isOver()) {
            check = Optional.empty();
            generator.gap();
            passiveGap();
            listener.checkOver(tNanos);
        }
    }

    /**
     * Whether the peak finder may see the present reading.
     *
     * @return false while the generator is turned, a check is under way, or the reading does not follow the generator
     */
    public boolean letsFinderSee() {
        return check.isEmpty() && !generator.isStepping() && following != Following.REFUSED;
    }

    /** Says that the stream was interrupted: what comes next need not follow on what came before. */
    public void gap() {
        widths.gap();
    }

    /**
     * Takes what the finder has made of a reading that it was let see, after it did.
     *
     * @param tNanos when it was read
     * @param smoothed on the finder's scale; NaN where there is nothing yet
     */
    public void smoothed(long tNanos, double smoothed) {
        if (seeksStrongest) {
            widths.level(tNanos, Math.abs(smoothed));
        }
    }

    /**
     * The scale on which the finder works.
     *
     * @param value as read, in the unit of the readings
     * @return above rest, in the unit of the readings, as if the generator had not been changed and the detector were straight
     */
    public double toFinder(double value) {
        return meter.straight(value) / generator.scale();
    }

    /**
     * What the generator gives, of what it gave when the adjuster was begun.
     *
     * @return ratio, positive; 1 while the generator has not been changed
     */
    public double scale() {
        return generator.scale();
    }

    /**
     * How far readings spread.
     *
     * @param value on the finder's scale, in the unit of the readings
     * @param sigma one sigma of it, on that scale, in the unit of the readings
     * @return one sigma of what is read, in the unit of the readings
     */
    public double spreadFromFinder(double value, double sigma) {
        return meter.readSpread(value * generator.scale(), sigma * generator.scale());
    }

    /**
     * What was read before the generator was changed, on the finder's scale.
     *
     * @param value as read, in the unit of the readings
     * @return above rest, in that unit, as a straight detector would show it
     */
    public double straight(double value) {
        return meter.straight(value);
    }

    /**
     * Back from the finder's scale.
     *
     * @param value from the finder, in the unit of the readings
     * @return as it would be read now
     */
    public double fromFinder(double value) {
        return meter.read(value * generator.scale());
    }

    /**
     * Takes a command.
     *
     * @param tNanos time of the last reading
     * @param command what the user wants
     */
    public void command(long tNanos, LevelCommand command) {
        switch (command.verb()) {
            case POINT -> at(Coded.find(MeterPoint.class, command.detail()).orElseThrow());
            case CHECK -> begin(Coded.find(CheckKind.class, command.detail()).orElseThrow());
            case DONE -> {
                check.ifPresent(it -> it.done(tNanos));
                endCheck(tNanos);
            }
            case CANCEL -> check = Optional.empty();
            case REPAIRED -> standing.clear();
            case SKIRTS_AT -> skirtHz = command.number();
            case IMAGE_AT -> imageDialHz = command.number();
            case WINDOW -> generator.window(command.number());
            case CUT -> generator.announceCut(tNanos, command.number());
            case TURNED -> generator.turned(tNanos, command.number());
            case TURNING, AWAY -> generator.awaitTurn(tNanos);
        }
    }

    private void at(MeterPoint newPoint) {
        zeroMoved = meter.moveTo(newPoint) || zeroMoved;
        generator.window(newPoint.highVolts());
    }

    private void begin(CheckKind kind) {
        check = Optional.of(new StepCheck(kind, new Progress(kind)));
    }

    /**
     * Whether the finder's scale has become another one since the last call, so that the finder must forget its best.
     *
     * @return true once after a rest reading, and after a law of the detector was found
     */
    public boolean takeZeroMoved() {
        boolean moved = zeroMoved;
        zeroMoved = false;
        return moved;
    }

    /**
     * The next adjuster is begun.
     *
     * @param name of the adjuster
     */
    public void adjusterBegun(String name) {
        adjuster = name;
        imageDialHz = Double.NaN;
        generator.forgetScale();
        widths.begin(name);
        jumps.gap();
        drift.gap();
    }

    /**
     * The finder has seen a pass.
     *
     * @param tNanos time of the reading that decided it
     * @param best on the finder's scale
     */
    public void passed(long tNanos, double best) {
        watchWidth(tNanos, Math.abs(best));
        if (meter.point().filter(MeterPoint::hasRest).isPresent() && !meter.isRestKnown() && !doubtSaid) {
            doubtSaid = true;
            listener.restMissing(tNanos);
        }
    }

    private void watchWidth(long tNanos, double best) {
        OptionalDouble times = widths.passed(best, best * generator.scale());
        if (times.isPresent() && standing.isClear()) {
            listener.widePeak(tNanos, times.getAsDouble());
        }
    }

    /**
     * The finder has seen a travel without a peak.
     *
     * @param tNanos time of the reading that decided it
     * @param reason why
     */
    public void noPeak(long tNanos, NoPeakReason reason) {
        if (reason == NoPeakReason.FLAT && !adjuster.isEmpty()) {
            standing.raise(tNanos, withoutEffect(), Double.NaN);
        }
    }

    private Suspicion withoutEffect() {
        return adjuster.toLowerCase(Locale.ROOT).contains("padder") ? Suspicion.PADDER : Suspicion.WINDING;
    }

    /**
     * The finder has seen two maxima in one travel.
     *
     * @param tNanos time of the reading that decided it
     * @param dipDb depth of the dip between them
     */
    public void twoPeaks(long tNanos, double dipDb) {
        if (dipDb > 3) {
            standing.raise(tNanos, Suspicion.SLUG_END, dipDb);
        }
    }

    /** Follows one check. */
    private final class Progress implements StepCheck.Listener {

        private final CheckKind kind;

        Progress(CheckKind kind) {
            this.kind = kind;
        }

        @Override
        public void ask(long tNanos, int move) {
            listener.asked(tNanos, kind, move, skirtHz, imageDialHz);
        }

        @Override
        public void dropped(long tNanos, double waitedSeconds) {
            listener.checkDropped(tNanos, waitedSeconds);
            if (kind == CheckKind.LEVEL) {
                judge.unmoved(tNanos);
            }
        }

        @Override
        public boolean isEnough(List<Level> levels) {
            return kind == CheckKind.LEVEL
                    && levels.size() == 2
                    && halvings(levels).isTooLittle();
        }

        @Override
        public boolean measured(long tNanos, List<Level> levels) {
            double before = above(levels.get(0));
            double first = above(levels.get(1));
            switch (kind) {
                case REST -> takeRest(tNanos, levels.get(0), levels.get(1));
                case LEVEL -> {
                    boolean flattened = following != Following.GOOD;
                    following = judge.level(tNanos, halvings(levels));
                    if (flattened && following == Following.GOOD) {
                        listener.cleared(tNanos);
                    }
                    return following == Following.GOOD && !isBackAlready(levels);
                }
                case LOADING -> judge.loading(tNanos, before, first);
                case EFFECT -> judge.effect(tNanos, before, first, withoutEffect());
                case SKIRTS -> judge.skirts(tNanos, skirtHz, before, first, above(levels.get(2)));
                case OTHER_IF -> judge.otherIf(tNanos, before, first, above(levels.get(2)));
                case HARMONIC -> judge.harmonic(tNanos, before, first, above(levels.get(2)));
                case IMAGE -> judge.image(tNanos, before, first);
                case DETECTOR_LAW ->
                    takeLaw(judge.law(tNanos, levels.stream().map(this::above).toList()));
            }
            return true;
        }

        /** Whoever puts the generator back instead of halving it once more has halved it once. */
        private Halvings halvings(List<Level> levels) {
            double first = above(levels.get(1));
            OptionalDouble second = levels.size() < 3 || isBackAlready(levels)
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(CheckJudge.db(first / above(levels.get(2))));
            return new Halvings(CheckJudge.db(above(levels.get(0)) / first), second);
        }

        private boolean isBackAlready(List<Level> levels) {
            return levels.size() > 2 && above(levels.get(2)) > above(levels.get(1));
        }

        private double above(Level level) {
            return Math.abs(meter.aboveRest(level.value()));
        }
    }

    private void takeRest(long tNanos, Level before, Level measured) {
        meter.takeRest(measured.value());
        zeroMoved = true;
        judge.rest(
                tNanos,
                before,
                measured,
                meter.point().map(MeterPoint::lowVolts).orElse(0.0));
    }

    /** Where the steps were not followed, the law from before stays. */
    private void takeLaw(Optional<DetectorLaw> law) {
        if (law.isPresent()) {
            meter.takeLaw(law);
            zeroMoved = true;
        }
    }
}
