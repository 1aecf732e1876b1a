package org.slugpeak.core.plan;

import java.util.Optional;
import java.util.OptionalDouble;

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
        HighTension highTension) {

    /**
     * Whether the plan says of any lead where it goes.
     *
     * @return false where it says nothing of generator, dummy antenna and meter
     */
    public boolean hasLeads() {
        return !injection.isEmpty() || !dummyAntenna.isEmpty() || !meterPoint.isEmpty();
    }

    /**
     * Whether the plan says of anything how it is set by a hand that stays out of the chassis.
     *
     * @return false where it says nothing of generator, modulation, dial and level
     */
    public boolean hasKnobs() {
        return generatorHz.isPresent()
                || !modulation.isEmpty()
                || dialHz.isPresent()
                || !dial.isEmpty()
                || level.isPresent();
    }

    /**
     * Whether all leads are where another set-up has them, so that no hand goes to a terminal.
     *
     * @param other the set-up before
     * @return true where generator, dummy antenna and meter stay connected as they are
     */
    public boolean hasLeadsOf(Setup other) {
        return injection.equals(other.injection)
                && dummyAntenna.equals(other.dummyAntenna)
                && meterPoint.equals(other.meterPoint);
    }
}
