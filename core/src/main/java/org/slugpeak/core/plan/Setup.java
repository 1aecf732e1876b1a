package org.slugpeak.core.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.scale.DialScale;

/**
 * How generator, set and meter stand for a step. Texts are the plan's own words and empty where it says nothing. Immutable;
 * any thread may use it.
 *
 * @param generatorHz generator frequency, Hz; empty where none is fed
 * @param modulation for example {@code none} or {@code 400 Hz, 30 %}
 * @param injection where and through what the generator is connected
 * @param dummyAntenna between generator and antenna
 * @param dialHz where the pointer stands, Hz; empty where the plan gives only words
 * @param dial where the pointer stands, in words
 * @param meterPoint where the meter is connected
 * @param level where the reading should stay
 * @param highTension where it may stand
 * @param particulars what only some plans say
 */
public record Setup(
        OptionalDouble generatorHz,
        String modulation,
        String injection,
        String dummyAntenna,
        OptionalDouble dialHz,
        String dial,
        String meterPoint,
        Optional<LevelRange> level,
        HighTension highTension,
        Particulars particulars) {

    /** A signal so near the pointer, as a part of its frequency, is the one that is tuned in. */
    private static final double TUNED_IN = 0.02;

    /**
     * Of a plan that says nothing more.
     *
     * @param generatorHz generator frequency, Hz
     * @param modulation in words
     * @param injection where and through what the generator is connected
     * @param dummyAntenna between generator and antenna
     * @param dialHz where the pointer stands, Hz
     * @param dial where the pointer stands, in words
     * @param meterPoint where the meter is connected
     * @param level where the reading should stay
     * @param highTension where it may stand
     */
    public Setup(
            OptionalDouble generatorHz,
            String modulation,
            String injection,
            String dummyAntenna,
            OptionalDouble dialHz,
            String dial,
            String meterPoint,
            Optional<LevelRange> level,
            HighTension highTension) {
        this(
                generatorHz,
                modulation,
                injection,
                dummyAntenna,
                dialHz,
                dial,
                meterPoint,
                level,
                highTension,
                Particulars.NONE);
    }

    /**
     * Whether the plan says of any lead where it goes.
     *
     * @return false where it says nothing of generator, dummy antenna, meter and gain control line
     */
    public boolean hasLeads() {
        return !injection.isEmpty()
                || !dummyAntenna.isEmpty()
                || !meterPoint.isEmpty()
                || particulars.point().isPresent()
                || particulars.avc().isPresent();
    }

    /**
     * To what the generator is set, as far as the plan alone tells it.
     *
     * @return Hz; empty where none is fed, or only a measurement tells its frequency
     */
    public OptionalDouble plannedHz() {
        return particulars.generatorMeasured() ? OptionalDouble.empty() : generatorHz;
    }

    /**
     * Whether the set is tuned to what the generator gives.
     *
     * @return true where both name one frequency, or only the dial does; false where the dial has no frequency
     */
    public boolean isTunedIn() {
        return dialHz.isPresent()
                && Math.abs(dialHz.getAsDouble() / generatorHz.orElse(dialHz.getAsDouble()) - 1) < TUNED_IN;
    }

    /**
     * Whether the plan says of anything how it is set by a hand that stays out of the chassis.
     *
     * @return false where it says nothing of generator, modulation, band, dial and level
     */
    public boolean hasKnobs() {
        return generatorHz.isPresent()
                || !modulation.isEmpty()
                || particulars.band().isPresent()
                || dialHz.isPresent()
                || !dial.isEmpty()
                || level.isPresent();
    }

    /**
     * Whether all leads are where another set-up has them, so that no hand goes to a terminal.
     *
     * @param other the set-up before
     * @return true where generator, dummy antenna, meter and gain control line stay connected as they are
     */
    public boolean hasLeadsOf(Setup other) {
        return injection.equals(other.injection)
                && dummyAntenna.equals(other.dummyAntenna)
                && meterPoint.equals(other.meterPoint)
                && particulars.point().equals(other.particulars.point())
                && particulars.avc().equals(other.particulars.avc());
    }

    /**
     * Above this the reading leaves its window: as the plan says, or else that of the meter point. A step whose plan says neither
     * inherits none.
     *
     * @return volts above rest, as a magnitude; infinite where nobody knows
     */
    public double highVolts() {
        double ofPoint = particulars.point().map(MeterPoint::highVolts).orElse(Double.POSITIVE_INFINITY);
        return level.map(LevelRange::highVolts).orElse(ofPoint);
    }

    /**
     * Below this the reading leaves its window, as {@link #highVolts} says of the other end.
     *
     * @return volts above rest, as a magnitude; infinite where nobody knows
     */
    public double lowVolts() {
        double ofPoint = particulars.point().map(MeterPoint::lowVolts).orElse(Double.POSITIVE_INFINITY);
        return level.map(LevelRange::lowVolts).orElse(ofPoint);
    }

    /**
     * What is left to a hand where the generator is set by the tool.
     *
     * @param reach what of it is
     * @return a copy without the frequency, without the level where that is set, and without a modulation that can be
     */
    public Setup withoutGenerator(GeneratorReach reach) {
        boolean modulated = reach.modulates() && Modulation.of(modulation).isPresent();
        return new Setup(
                OptionalDouble.empty(),
                modulated ? "" : modulation,
                injection,
                dummyAntenna,
                dialHz,
                dial,
                meterPoint,
                reach.setsLevel() ? Optional.empty() : level,
                highTension,
                particulars);
    }

    /**
     * The same with something said of the gain control line.
     *
     * @param line what stands on it
     * @return a copy
     */
    Setup withAvc(AvcLine line) {
        return with(particulars.withAvc(line));
    }

    /**
     * The same with what the generator's dial has to be set to for its frequency.
     *
     * @param scale how that dial errs
     * @return a copy; this where no frequency is fed, only a measurement tells it, or it lies outside of the known points
     */
    Setup marked(DialScale scale) {
        return plannedHz().stream()
                .mapToObj(scale::dialFor)
                .flatMap(Optional::stream)
                .findFirst()
                .map(mark -> with(particulars.withMark(mark)))
                .orElse(this);
    }

    private Setup with(Particulars others) {
        return new Setup(
                generatorHz, modulation, injection, dummyAntenna, dialHz, dial, meterPoint, level, highTension, others);
    }
}
