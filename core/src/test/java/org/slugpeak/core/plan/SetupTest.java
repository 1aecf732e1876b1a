package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Leads are moved with the set off; knobs are turned while it is on (common practice, no source). */
class SetupTest {

    static final Setup NOTHING = with(OptionalDouble.empty(), "", "", "", OptionalDouble.empty());

    private static Setup with(
            OptionalDouble generatorHz, String injection, String dummy, String meterPoint, OptionalDouble dialHz) {
        return new Setup(
                generatorHz, "", injection, dummy, dialHz, "", meterPoint, Optional.empty(), HighTension.POSSIBLE);
    }

    private static Setup leads(String injection, String dummy, String meterPoint) {
        return with(OptionalDouble.empty(), injection, dummy, meterPoint, OptionalDouble.empty());
    }

    private static Setup knobs(String modulation, String dial, Optional<LevelRange> level) {
        return new Setup(
                OptionalDouble.empty(),
                modulation,
                "",
                "",
                OptionalDouble.empty(),
                dial,
                "",
                level,
                HighTension.POSSIBLE);
    }

    static Stream<Setup> oneLeadAlone() {
        return Stream.of(leads("grid", "", ""), leads("", "200 pF", ""), leads("", "", "detector"));
    }

    static Stream<Setup> oneKnobAlone() {
        return Stream.of(
                with(OptionalDouble.of(455e3), "", "", "", OptionalDouble.empty()),
                with(OptionalDouble.empty(), "", "", "", OptionalDouble.of(1400e3)),
                knobs("400 Hz", "", Optional.empty()),
                knobs("", "at the end of its travel", Optional.empty()),
                knobs("", "", Optional.of(new LevelRange(0.5, 1, "V"))));
    }

    @Test
    void aFrequencyThatOnlyAMeasurementTellsIsNotPlanned() {
        Setup planned = with(OptionalDouble.of(455e3), "", "", "", OptionalDouble.empty());
        assertEquals(OptionalDouble.of(455e3), planned.plannedHz());
        Setup measured = new Setup(
                planned.generatorHz(),
                "",
                "",
                "",
                OptionalDouble.empty(),
                "",
                "",
                Optional.empty(),
                HighTension.POSSIBLE,
                new Particulars(Optional.empty(), Optional.empty(), true, Optional.empty(), Optional.empty()));
        assertEquals(OptionalDouble.empty(), measured.plannedHz());
        assertEquals(OptionalDouble.empty(), NOTHING.plannedHz());
    }

    @Test
    void withNothingInItHasNeither() {
        assertFalse(NOTHING.hasLeads());
        assertFalse(NOTHING.hasKnobs());
    }

    @ParameterizedTest
    @MethodSource("oneLeadAlone")
    void hasLeadsWithAnyOneOfThem(Setup setup) {
        assertTrue(setup.hasLeads());
        assertFalse(setup.hasKnobs());
    }

    @ParameterizedTest
    @MethodSource("oneKnobAlone")
    void hasKnobsWithAnyOneOfThem(Setup setup) {
        assertTrue(setup.hasKnobs());
        assertFalse(setup.hasLeads());
    }

    /** Whichever lead differs, a hand has to move it. */
    @ParameterizedTest
    @MethodSource("oneLeadAlone")
    void hasTheLeadsOfAnotherOnlyWhereAllAreTheSame(Setup setup) {
        assertTrue(setup.hasLeadsOf(setup));
        assertFalse(setup.hasLeadsOf(NOTHING));
        assertFalse(NOTHING.hasLeadsOf(setup));
    }

    @ParameterizedTest
    @MethodSource("oneKnobAlone")
    void hasTheLeadsOfAnotherHoweverTheKnobsStand(Setup setup) {
        assertEquals(NOTHING.hasLeadsOf(setup), setup.hasLeadsOf(NOTHING));
        assertTrue(setup.hasLeadsOf(NOTHING));
    }
}
