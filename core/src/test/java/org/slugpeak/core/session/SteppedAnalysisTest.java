package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;

/** Settled values become the records that readings of a turning hand become. */
final class SteppedAnalysisTest {

    private static final PeakSettings SETTINGS = PeakSettings.defaults();

    private final List<SessionRecord> records = new ArrayList<>();
    private final Analysis analysis = new Analysis(SETTINGS, records::add);
    private long seconds;

    @BeforeEach
    void begin() {
        start(true);
    }

    private void start(boolean stepped) {
        analysis.start(new SessionStart(1, Instant.EPOCH, "-", Measurand.DC_VOLTS, SETTINGS, "slugpeak test", stepped));
        records.clear();
    }

    private void type(double... values) {
        for (double value : values) {
            analysis.reading(Reading.of(seconds++ * 1_000_000_000, value));
        }
    }

    private <T> List<T> all(Class<T> type) {
        return records.stream().filter(type::isInstance).map(type::cast).toList();
    }

    @Test
    void aPassBringsItsStepsAndAReturnIsHeldAtOnce() {
        type(1, 2, 1, 2);
        assertEquals(1.0, all(Passed.class).get(0).back().orElseThrow().steps());
        assertEquals(List.of(new Returned(3_000_000_000L, 2, 0)), all(Returned.class));
        assertEquals(List.of(new Held(3_000_000_000L, 2, 0)), all(Held.class));
        assertEquals(4, all(ReadingTaken.class).size());
    }

    @Test
    void whatWasHeldIsTheLevelThatTheAdjusterIsDoneAt() {
        analysis.nextAdjuster("T1");
        type(1, 2, 1, 2);
        analysis.end(EndReason.Known.DONE);
        Adjuster done = all(Adjuster.class).get(1);
        assertEquals(1, done.before());
        assertEquals(2, done.after());
        assertEquals(6.02, done.gainDb(), 0.005);
    }

    @Test
    void theNextAdjusterAndAnotherGoalBeginAnew() {
        type(1, 2);
        analysis.nextAdjuster("T2");
        type(3, 2);
        assertEquals(3, all(ReadingTaken.class).get(3).best());
        analysis.command(new Instruction.Find(Seek.DIP));
        type(2, 1, 2);
        assertEquals(1, all(Passed.class).size());
        assertEquals(1, all(Passed.class).get(0).best());
    }

    @Test
    void anInstructionTakesTheLastValueBackAndSaysSoWhereThereIsNone() {
        type(1, 9);
        analysis.command(new Instruction.TakeBack());
        type(2);
        assertEquals(2, all(ReadingTaken.class).get(2).best());
        analysis.command(new Instruction.TakeBack());
        analysis.command(new Instruction.TakeBack());
        assertEquals(List.of(), all(Work.class));
        analysis.command(new Instruction.TakeBack());
        assertEquals(1, all(Work.NothingToTakeBack.class).size());
    }

    @Test
    void overRangeIsToldAndClearedAndIsNoValue() {
        type(1, 2);
        analysis.reading(Reading.without(seconds++ * 1_000_000_000, Condition.OVER_RANGE));
        type(1.5);
        assertEquals(1, all(Overload.class).size());
        assertEquals(1, all(OverloadCleared.class).size());
        assertEquals(List.of(), all(Passed.class));
        assertTrue(Double.isNaN(all(ReadingTaken.class).get(2).smoothed()));
    }

    @Test
    void theClockSaysNothing() {
        analysis.reading(Reading.of(0, 1));
        analysis.reading(Reading.of(0, 2));
        analysis.reading(Reading.of(-5, 1));
        assertEquals(1, all(Passed.class).size());
        assertEquals(List.of(), all(Caution.class));
    }

    @Test
    void withoutStepsAStreamAsSlowAsTypingIsToldOnceThatTheyExist() {
        start(false);
        type(1, 2, 3, 4, 5);
        assertEquals(List.of(), slow());
        type(6, 7, 8, 9, 10, 11, 12);
        List<Caution.SlowReadings> slow = slow();
        assertEquals(1, slow.size());
        assertEquals(1.0, slow.get(0).intervalSeconds());
    }

    @Test
    void aFasterStreamIsNotToldOfSteps() {
        start(false);
        for (int i = 0; i < 20; i++) {
            analysis.reading(Reading.of(i * 500_000_000L, i));
        }
        assertEquals(List.of(), slow());
    }

    private List<Caution.SlowReadings> slow() {
        return all(Caution.SlowReadings.class);
    }
}
