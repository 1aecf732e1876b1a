package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a hand does in the set is done with the set off (common practice, no source), so it must not be overlooked. */
class PreparationTest {

    private static final Optional<Damping> NONE = Optional.empty();
    private static final Optional<Damping> ON_TOP = Optional.of(new Damping("T1 top", 22e3));
    private static final Optional<Damping> ON_BOTTOM = Optional.of(new Damping("T1 bottom", 22e3));

    private static Preparation resistors(Optional<Damping> before, Optional<Damping> wanted) {
        return new Preparation(Optional.empty(), false, false, before, wanted);
    }

    private static Preparation setUp(String injection, OptionalDouble hz, boolean first) {
        Setup setup = new Setup(
                hz, "", injection, "", OptionalDouble.empty(), "", "", Optional.empty(), HighTension.POSSIBLE);
        return new Preparation(Optional.of(setup), first, false, NONE, NONE);
    }

    @Test
    void aResistorThatStaysIsNotTouched() {
        Preparation stays = resistors(ON_TOP, ON_TOP);
        assertEquals(NONE, stays.takesOff());
        assertEquals(NONE, stays.putsOn());
        assertFalse(stays.isAtTerminals());
        assertTrue(stays.isNothing());
    }

    @Test
    void anotherResistorComesOffAndGoesOnInOneJob() {
        Preparation changes = resistors(ON_TOP, ON_BOTTOM);
        assertEquals(ON_TOP, changes.takesOff());
        assertEquals(ON_BOTTOM, changes.putsOn());
        assertTrue(changes.isAtTerminals());
        assertFalse(changes.isNothing());
    }

    @Test
    void aHandGoesInForAResistorOrALead() {
        assertTrue(resistors(NONE, ON_TOP).isAtTerminals());
        assertTrue(resistors(ON_TOP, NONE).isAtTerminals());
        assertTrue(new Preparation(Optional.empty(), false, true, NONE, NONE).isAtTerminals());
        assertFalse(resistors(NONE, NONE).isAtTerminals());
    }

    @Test
    void aKnobAloneIsSomethingToDo() {
        assertFalse(setUp("", OptionalDouble.of(455e3), false).isNothing());
        assertFalse(setUp("", OptionalDouble.of(455e3), true).isNothing());
    }

    @Test
    void leadsThatAreOnAlreadyAreLookedAtOnceAtTheBeginning() {
        assertFalse(setUp("grid", OptionalDouble.empty(), true).isNothing());
        assertTrue(setUp("grid", OptionalDouble.empty(), false).isNothing());
        assertTrue(setUp("", OptionalDouble.empty(), true).isNothing());
    }
}
