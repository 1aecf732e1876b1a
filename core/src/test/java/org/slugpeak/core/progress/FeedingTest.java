package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.level.MeterScale;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;

class FeedingTest {

    private static final GeneratorReach REACH =
            new GeneratorReach(true, true, true, 10e3, 30e6, 1e-6, 1, LevelUnit.VOLTS_EMF, 100_000_000);

    private final Feeding feeding = new Feeding();
    private final MeterScale scale = new MeterScale();
    private long tNanos;

    @BeforeEach
    void aStepBegins() {
        feeding.by(REACH);
        begin();
    }

    private void begin() {
        feeding.feed(Plans.step("T2 top"));
        feeding.stands(new Request.GeneratorStands(tNanos, 455e3, 1e-3));
    }

    /** Two seconds at ten readings a second. */
    private OptionalDouble after(double volts) {
        OptionalDouble last = OptionalDouble.empty();
        for (int i = 0; i < 20; i++) {
            tNanos += 100_000_000;
            last = feeding.see(new ReadingTaken(Reading.of(tNanos, volts), volts, 1, 0.001, 0.5, Trend.STEADY), scale);
        }
        return last;
    }

    /** The window of the step is 0.5 to 1.5 V, its middle 0.866 V. */
    @Test
    void aReadingThatLeftItsWindowIsBroughtBack() {
        assertEquals(Math.sqrt(0.5 * 1.5) / 3, after(3).orElseThrow(), 0.01);
        begin();
        assertEquals(Decibels.ratio(12), after(0.2).orElseThrow(), 0.01, "not more than 12 dB at once");
    }

    @Test
    void aReadingInItsWindowIsLeftAlone() {
        assertEquals(OptionalDouble.empty(), after(0.9));
    }

    /** A lead is off: more and more signal would come down on the set at once when it is put back. */
    @Test
    void aGeneratorThatTheReadingDoesNotFollowIsNotTurnedUpAgain() {
        assertTrue(after(0.01).isPresent());
        feeding.fails(new Request.GeneratorFails(tNanos, false, "the reading does not follow"));
        assertEquals(OptionalDouble.empty(), after(0.01));
        begin();
        assertTrue(after(0.01).isPresent(), "another step, another try");
    }

    @Test
    void aGeneratorAtTheEndOfItsReachStays() {
        feeding.stands(new Request.GeneratorStands(tNanos, 455e3, 1));
        assertEquals(OptionalDouble.empty(), after(0.01));
    }
}
