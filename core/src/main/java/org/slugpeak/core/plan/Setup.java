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
 */
public record Setup(
        OptionalDouble generatorHz,
        String modulation,
        String injection,
        String dummyAntenna,
        OptionalDouble dialHz,
        String dial,
        String meterPoint,
        Optional<LevelRange> level) {}
