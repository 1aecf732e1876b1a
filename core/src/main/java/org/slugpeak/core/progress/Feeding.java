package org.slugpeak.core.progress;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.LevelServo;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterScale;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;

/**
 * A generator that obeys: what of a set-up is left to a hand, whether it stands already, and how the reading is held in its window. Every
 * change of its level is a command to the level watch, as a turn by hand is. One thread at a time.
 */
final class Feeding {

    /** Within this of the best the hand is at a peak, dB. */
    private static final double NEAR_DB = 1;

    /** The level watch has said by then what became of a change. */
    private static final long CHANGE_NANOS = 8_000_000_000L;

    /** Less is no change that the level watch would see. */
    private static final double LEAST_DB = 1;

    private Optional<GeneratorReach> reach = Optional.empty();
    private Optional<LevelServo> servo = Optional.empty();
    private boolean awaited;
    private boolean wasGone;
    private boolean doubted;
    private boolean atItsEnd;
    private double emfVolts = Double.NaN;
    private long changedNanos = -CHANGE_NANOS;

    void by(GeneratorReach generator) {
        reach = Optional.of(generator);
    }

    private boolean feeds(Setup setup) {
        return reach.isPresent()
                && setup.generatorHz().isPresent()
                && !setup.particulars().generatorMeasured();
    }

    Setup leftToHand(Setup setup) {
        return feeds(setup) ? setup.withoutGenerator(reach.get()) : setup;
    }

    /** Whether it is to be set for a step; from then on everything waits until it stands. */
    boolean feed(PlanStep step) {
        servo = Optional.empty();
        doubted = false;
        atItsEnd = false;
        awaited = feeds(step.setup());
        if (awaited && turnsLevel() && step.goal().seek().seeksStrongest()) {
            servo = servo(step.setup());
        }
        return awaited;
    }

    private static Optional<LevelServo> servo(Setup setup) {
        return Double.isFinite(setup.highVolts())
                ? Optional.of(new LevelServo(setup.lowVolts(), setup.highVolts()))
                : Optional.empty();
    }

    /** Whether nothing that is read counts, since the generator does not stand yet, or nobody knows how. */
    boolean isAwaited() {
        return awaited;
    }

    /** Whether a change of its level that is asked for is made from here, in whatever step. */
    boolean turnsLevel() {
        return reach.isPresent() && reach.get().setsLevel();
    }

    boolean holdsLevel() {
        return servo.isPresent();
    }

    boolean isInside() {
        return servo.isPresent() && servo.get().isInside();
    }

    /** Whether there is nothing that its level could do for the window: it is at its end, or the reading does not follow. */
    boolean isHelpless() {
        return atItsEnd || doubted;
    }

    /** It stands; whether it had gone meanwhile, so that what was read before is no measure. */
    boolean stands(Request.GeneratorStands it) {
        boolean back = wasGone;
        awaited = false;
        wasGone = false;
        emfVolts = it.emfVolts() > 0 ? it.emfVolts() : emfVolts;
        servo.ifPresent(LevelServo::forget);
        return back;
    }

    /** Where the reading does not do what the level does, as with a lead off, the level stays until the next step: no servo runs away. */
    void fails(Request.GeneratorFails it) {
        awaited = it.gone();
        doubted = doubted || !it.gone();
        wasGone = wasGone || it.gone();
    }

    void said(Said it) {
        if (it instanceof Said.Command said
                && said.instruction() instanceof Instruction.Level level
                && level.command().verb() == LevelCommand.Verb.CUT) {
            changedNanos = it.tNanos();
        }
    }

    /** The level watch has said what became of a change. */
    void changeIsOver() {
        changedNanos = -CHANGE_NANOS;
        servo.ifPresent(LevelServo::forget);
    }

    /** By which factor its level should change, by the law of the detector; empty where it stays or cannot. */
    OptionalDouble see(ReadingTaken it, MeterScale scale) {
        if (servo.isEmpty() || doubted || it.tNanos() - changedNanos < CHANGE_NANOS) {
            return OptionalDouble.empty();
        }
        boolean near = it.ofBest() >= Decibels.ratio(-NEAR_DB);
        double aboveVolts = Math.abs(scale.aboveRest(it.reading().value()));
        OptionalDouble factor = servo.get().see(it.tNanos(), aboveVolts, near);
        if (factor.isEmpty()) {
            return factor;
        }
        OptionalDouble reached = withinReach(ofSignal(factor.getAsDouble(), aboveVolts, scale));
        atItsEnd = reached.isEmpty();
        return reached;
    }

    /** A detector that is not straight changes by another factor than the signal does. */
    private static double ofSignal(double ofReading, double aboveVolts, MeterScale scale) {
        double straightVolts = scale.straightAboveRest(aboveVolts);
        double ratio = scale.straightAboveRest(ofReading * aboveVolts) / straightVolts;
        return straightVolts > 0 && Double.isFinite(ratio) ? ratio : ofReading;
    }

    /** By which factor its level changes where this one is wished; empty where it has not so much left that anybody would see it. */
    OptionalDouble withinReach(double factor) {
        double reached =
                Double.isNaN(emfVolts) ? factor : reach.orElseThrow().nearestEmfVolts(emfVolts * factor) / emfVolts;
        return Math.abs(Decibels.of(reached)) >= LEAST_DB ? OptionalDouble.of(reached) : OptionalDouble.empty();
    }
}
