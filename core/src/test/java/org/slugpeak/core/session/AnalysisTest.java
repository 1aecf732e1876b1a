package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

final class AnalysisTest {

    private static final long STEP_NANOS = 20_000_000;

    private final List<SessionRecord> records = new ArrayList<>();
    private final Analysis analysis = new Analysis(PeakSettings.defaults(), records::add);
    private long tNanos = 77_000_000_000L;

    private void read(double value) {
        analysis.reading(Reading.of(tNanos, value));
        tNanos += STEP_NANOS;
    }

    /** V = 1 / sqrt(1 + x^2), the law of one slug at a fixed frequency; x in half-widths, a quarter of one a second. */
    private void turn(double fromX, double toX) {
        double step = Math.copySign(0.005, toX - fromX);
        int steps = (int) Math.round((toX - fromX) / step);
        for (int i = 0; i < steps; i++) {
            double x = fromX + i * step;
            read(1 / Math.sqrt(1 + x * x));
        }
    }

    private <T extends SessionRecord> List<T> all(Class<T> type) {
        return records.stream().filter(type::isInstance).map(type::cast).toList();
    }

    @Test
    void anAdjusterThatIsDoneSaysNothingMoreUntilTheNextIsBegun() {
        analysis.nextAdjuster("T2 top");
        turn(-1, 0.2);
        analysis.adjusterEnded(Adjuster.Action.DONE);
        int before = all(Finding.class).size();
        turn(0.2, 1.5);
        turn(1.5, -0.5);
        assertEquals(before, all(Finding.class).size(), "clips may be moving");
        analysis.nextAdjuster("T2 bottom");
        turn(-1, 1);
        assertTrue(all(Finding.class).size() > before);
    }

    @Nested
    class Records {

        @Test
        void timesCountFromTheFirstReading() {
            read(1);
            read(1);
            assertEquals(
                    List.of(0L, STEP_NANOS),
                    all(ReadingTaken.class).stream().map(SessionRecord::tNanos).toList());
        }

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
        void everyReadingClosesItsStepWithExactlyOneReadingRecord(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Condition> conditions = List.of(Condition.values());
            for (int i = 1; i <= 2000; i++) {
                double value = Double.longBitsToDouble(random.nextLong());
                Condition condition = conditions.get(random.nextInt(conditions.size()));
                tNanos += random.nextLong(-STEP_NANOS, 3 * STEP_NANOS);
                analysis.reading(new Reading(tNanos, Double.isFinite(value) ? value : 0, condition));
                assertEquals(i, all(ReadingTaken.class).size());
                assertTrue(records.get(records.size() - 1) instanceof ReadingTaken, "the reading record comes last");
            }
        }

        @ParameterizedTest
        @EnumSource(Condition.class)
        void theReadingIsRecordedAsItCame(Condition condition) {
            analysis.reading(new Reading(tNanos, 0.25, condition));
            ReadingTaken taken = all(ReadingTaken.class).get(0);
            assertEquals(condition, taken.reading().condition());
            assertEquals(condition.hasValue() ? 0.25 : 0, taken.reading().value());
        }

        @Test
        void theEndCountsTheReadings() {
            read(1);
            read(2);
            analysis.end(EndReason.Known.QUIT);
            assertEquals(new SessionEnd(STEP_NANOS, 2, EndReason.Known.QUIT), records.get(records.size() - 1));
        }
    }

    @Nested
    class Verdicts {

        @Test
        void aSlugTurnedPastItsPeakAndBackIsPassedReturnedAndHeld() {
            turn(-1.5, 0.5);
            turn(0.5, 0);
            for (int i = 0; i < 200; i++) {
                read(1);
            }
            List<String> verdicts = records.stream()
                    .filter(each -> each instanceof Passed || each instanceof Returned || each instanceof Held)
                    .map(each -> each.getClass().getSimpleName())
                    .toList();
            assertEquals(List.of("Passed", "Returned", "Held"), verdicts);
            assertEquals(1, all(Passed.class).get(0).best(), 0.002);
        }

        @Test
        void theBestOutlivesALostLink() {
            turn(-1.5, 0.5);
            analysis.link(tNanos, Link.State.LOST, new LinkDetail.Told("unplugged"));
            tNanos += 5_000_000_000L;
            analysis.link(tNanos, Link.State.RESUMED, LinkDetail.NONE);
            read(0.5);
            List<ReadingTaken> taken = all(ReadingTaken.class);
            assertEquals(1, taken.get(taken.size() - 1).best(), 0.002);
            assertEquals(2, all(Link.Changed.class).size());
        }

        @Test
        void theNextAdjusterStartsWithoutABest() {
            turn(-1.5, 0.5);
            analysis.nextAdjuster("T1 bottom");
            read(0.2);
            List<ReadingTaken> taken = all(ReadingTaken.class);
            assertTrue(Double.isNaN(taken.get(taken.size() - 1).best())
                    || taken.get(taken.size() - 1).best() < 0.3);
        }
    }

    @Nested
    class Overloads {

        @Test
        void isSaidOnceAndItsEndOnce() {
            read(1);
            for (int i = 0; i < 10; i++) {
                tNanos += STEP_NANOS;
                analysis.reading(Reading.without(tNanos, Condition.OVER_RANGE));
            }
            for (int i = 0; i < 100; i++) {
                read(1);
            }
            assertAll(
                    () -> assertEquals(1, all(Overload.class).size()),
                    () -> assertEquals(
                            Overload.Cause.OVER_RANGE,
                            all(Overload.class).get(0).cause()),
                    () -> assertEquals(1, all(OverloadCleared.class).size()));
        }

        @Test
        void neverBecomesTheBest() {
            read(1);
            for (int i = 0; i < 50; i++) {
                tNanos += STEP_NANOS;
                analysis.reading(new Reading(tNanos, 4095, Condition.FULL_SCALE));
            }
            List<ReadingTaken> taken = all(ReadingTaken.class);
            double best = taken.get(taken.size() - 1).best();
            assertTrue(Double.isNaN(best) || best <= 1, "best is " + best);
        }
    }

    @Nested
    class AdjusterRecords {

        @Test
        void sayWhatWasGained() {
            analysis.nextAdjuster("T2 top");
            for (int i = 0; i < 100; i++) {
                read(0.5);
            }
            for (int i = 0; i < 200; i++) {
                read(1);
            }
            analysis.adjusterEnded(Adjuster.Action.DONE);
            Adjuster done = all(Adjuster.class).get(1);
            assertAll(
                    () -> assertEquals("T2 top", done.name()),
                    () -> assertEquals(0.5, done.before(), 1e-9),
                    () -> assertEquals(1, done.after(), 1e-6),
                    () -> assertEquals(20 * Math.log10(2), done.gainDb(), 1e-5));
        }

        @Test
        void areNotMadeForAnAdjusterThatWasNotBegun() {
            read(1);
            analysis.adjusterEnded(Adjuster.Action.DONE);
            assertTrue(all(Adjuster.class).isEmpty());
        }
    }

    @Test
    void aDipIsSoughtWhereASessionSeeksOne() {
        Analysis trap = new Analysis(PeakSettings.defaults().withSeek(Seek.DIP), records::add);
        for (int i = 0; i < 420; i++) {
            double x = -1.5 + i * 0.005;
            tNanos += STEP_NANOS;
            trap.reading(Reading.of(tNanos, Math.sqrt(0.01 + x * x)));
        }
        assertEquals(1, all(Passed.class).size());
        assertEquals(0.1, all(Passed.class).get(0).best(), 0.005);
    }
}
