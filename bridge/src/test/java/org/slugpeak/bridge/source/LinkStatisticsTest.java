package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

class LinkStatisticsTest {

    /** Determinations of copper in flour: Analytical Methods Committee, Analyst 114 (1989) 1693 (from memory; recomputed). */
    private static final double[] COPPER = {
        2.20, 2.20, 2.40, 2.40, 2.50, 2.70, 2.80, 2.90, 3.03, 3.03, 3.10, 3.37, 3.40, 3.40, 3.40, 3.50, 3.60, 3.70,
        3.70, 3.70, 3.70, 3.77, 5.28, 28.95
    };

    private static final long THOUSANDTH = TimeUnit.MILLISECONDS.toNanos(1);

    @Test
    void spreadByMediansIsThePublishedOne() {
        RobustSpread spread = new RobustSpread();
        for (double each : COPPER) {
            spread.add(each);
        }
        assertEquals(3.385, spread.median().orElseThrow(), 1e-12);
        assertEquals(0.526324, spread.aboutMedian().orElseThrow(), 1e-6);
    }

    @Test
    void aSteadyLinkHasItsRateAndNoJitter() {
        LinkStatistics statistics = new LinkStatistics(OptionalDouble.empty());
        for (long i = 0; i < 101; i++) {
            statistics.reading(Reading.of(i * 20 * THOUSANDTH, i % 2 == 0 ? 1.0 : 1.005));
        }
        LinkReport report = statistics.report();
        assertAll(
                () -> assertEquals(101, report.readings()),
                () -> assertEquals(50, report.perSecond().orElseThrow(), 1e-9),
                () -> assertEquals(0, report.jitterSeconds().orElseThrow(), 1e-12),
                () -> assertEquals(0, report.gaps()),
                () -> assertEquals(0.005, report.resolution().orElseThrow(), 1e-12),
                () -> assertEquals(OptionalDouble.empty(), report.effectiveBits()));
    }

    @Test
    void whiteNoiseIsMeasuredThroughADriftAndASpike() {
        SplittableRandom random = new SplittableRandom(1589);
        LinkStatistics statistics = new LinkStatistics(OptionalDouble.empty());
        for (int i = 0; i < 20_000; i++) {
            double drift = i * 1e-4;
            double spike = i == 7_000 ? 50 : 0;
            statistics.reading(Reading.of(i * THOUSANDTH, 1 + drift + spike + 0.01 * random.nextGaussian()));
        }
        assertEquals(0.01, statistics.report().noise().orElseThrow(), 3e-4);
    }

    @Test
    void anIdealConverterHasItsOwnNumberOfBits() {
        int bits = 10;
        double span = 5;
        double step = span / (1 << bits);
        SplittableRandom random = new SplittableRandom(1241);
        LinkStatistics statistics = new LinkStatistics(OptionalDouble.of(span));
        for (int i = 0; i < 5_000; i++) {
            statistics.reading(Reading.of(i * THOUSANDTH, step * (500 + (random.nextInt(20) == 0 ? 1 : 0))));
        }
        assertEquals(bits, statistics.report().effectiveBits().orElseThrow(), 1e-9);
    }

    @Test
    void everyKindOfTroubleIsCountedByItself() {
        LinkStatistics statistics = new LinkStatistics(OptionalDouble.empty());
        for (long i = 0; i < 20; i++) {
            statistics.reading(Reading.of(i * 100 * THOUSANDTH, 1));
        }
        statistics.reading(Reading.without(3_000 * THOUSANDTH, Condition.OVER_RANGE));
        statistics.reading(new Reading(3_100 * THOUSANDTH, 5, Condition.FULL_SCALE));
        statistics.reading(Reading.without(3_200 * THOUSANDTH, Condition.NO_VALUE));
        statistics.garbled("port", Garble.CHECKSUM, "");
        statistics.garbled("port", Garble.CHECKSUM, "");
        statistics.garbled("port", Garble.TORN, "");
        statistics.notice(3_200 * THOUSANDTH, LinkNotice.RANGE_CHANGED, LinkDetail.NONE);
        statistics.notice(3_200 * THOUSANDTH, LinkNotice.RESTARTED, LinkDetail.NONE);
        statistics.link(4_000 * THOUSANDTH, Link.State.STALE, LinkDetail.NONE);
        statistics.link(5_000 * THOUSANDTH, Link.State.LOST, LinkDetail.NONE);
        statistics.reading(Reading.of(90_000 * THOUSANDTH, 1));
        LinkReport report = statistics.report();
        assertAll(
                () -> assertEquals(2, report.overRange()),
                () -> assertEquals(1, report.withoutValue()),
                () -> assertEquals(Map.of(Garble.CHECKSUM, 2L, Garble.TORN, 1L), report.garbled()),
                () -> assertEquals(3, report.garbledInAll()),
                () -> assertEquals(1, report.rangeChanges()),
                () -> assertEquals(1, report.restarts()),
                () -> assertEquals(1, report.stale()),
                () -> assertEquals(1, report.lost()),
                () -> assertEquals(1, report.gaps()),
                () -> assertTrue(report.longestSeconds().orElseThrow() < 2, "an unplugged instrument is no slow one"));
    }

    @Test
    void memoryIsBoundedAndTheLatestCount() {
        RobustSpread spread = new RobustSpread();
        for (int i = 0; i < 200_000; i++) {
            spread.add(i < 100_000 ? 1 : 2);
        }
        assertEquals(1 << 16, spread.count());
        assertEquals(2, spread.median().orElseThrow());
    }
}
