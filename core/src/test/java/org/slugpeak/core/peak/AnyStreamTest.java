package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Meter;
import org.slugpeak.core.peak.grammar.Piece;
import org.slugpeak.core.peak.grammar.Shape;
import org.slugpeak.core.peak.grammar.Stamps;
import org.slugpeak.core.peak.grammar.Trace;
import org.slugpeak.core.peak.grammar.Traces;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/** What holds for every stream of finite readings, over whatever transport. */
class AnyStreamTest {

    /** A stream that has gone on for so long has something to show. */
    private static final double SOON_SECONDS = 3;

    private static final double RISE_SECONDS = 5;
    private static final double RISE_READINGS = 40;
    /** A slower meter, after a jump and in packets, may take longer than the rise lasts to know its noise. */
    private static final double SHOWS_SOON_PER_SECOND = 10;

    private static final double TO_VOLTS = 1.5;
    /** Two readings a second climb by a tenth of this from one to the next; a mean of a few may lag by as many. */
    private static final double FOLLOWED = 0.2;

    /** What a user may do at any time. */
    private enum Call {
        NONE,
        GAP,
        RESTART,
        SCALE_CHANGED;

        void on(PeakFinder finder) {
            switch (this) {
                case NONE -> {}
                case GAP -> finder.gap();
                case RESTART -> finder.restart();
                case SCALE_CHANGED -> finder.scaleChanged();
            }
        }
    }

    @Provide
    Arbitrary<Trace> any() {
        return Traces.any();
    }

    @Provide
    Arbitrary<Trace> unbroken() {
        return Traces.unbroken();
    }

    @Law
    void makesNothingThrowNorRunToInfinity(
            @ForAll("any") Trace trace,
            @ForAll Seek seek,
            @ForAll Call call,
            @ForAll @IntRange(min = 0, max = 100) int afterPercent) {
        List<Reading> readings = trace.readings();
        int cut = readings.size() * afterPercent / 100;
        Heard heard = new Heard(new PeakSettings(seek, Duration.ofMillis(200)));
        heard.hear(readings.subList(0, cut), AnyStreamTest::assertSound);
        call.on(heard.finder);
        heard.hear(readings.subList(cut, readings.size()), AnyStreamTest::assertSound);
        for (Told.Word word : heard.told.all) {
            assertFalse(Double.isInfinite(word.value()) || Double.isInfinite(word.db()), word.toString());
            assertFalse(word.db() < 0, word.toString());
        }
    }

    private static void assertSound(PeakFinder finder) {
        assertFalse(Double.isInfinite(finder.best()));
        assertFalse(Double.isInfinite(finder.smoothed()));
        assertFalse(Double.isInfinite(finder.ofBest()));
        assertFalse(finder.bestSigma() < 0 || Double.isInfinite(finder.bestSigma()));
        assertFalse(finder.belowBestDb() < 0 || Double.isInfinite(finder.belowBestDb()));
    }

    @Law
    void hasABestAndATrendOnceItHasGoneOnForAWhile(@ForAll("unbroken") Trace trace) {
        Assume.that(trace.seconds() >= SOON_SECONDS);
        PeakFinder finder = Heard.of(Seek.PEAK, trace.readings()).finder;
        assertTrue(Double.isFinite(finder.best()));
        assertTrue(Double.isFinite(finder.bestSigma()));
        assertTrue(Double.isFinite(finder.smoothed()));
        assertTrue(List.of(Trend.values()).contains(finder.trend()));
    }

    /** A clear rise of a few seconds, over any transport. */
    @Law
    void isFollowedWhateverCameBefore(
            @ForAll("plausible") Trace trace, @ForAll("rates") double perSecond, @ForAll("stamps") Stamps stamps) {
        Meter meter = new Meter(perSecond, 0, 0, stamps);
        Trace longer = trace.then(
                new Piece(new Shape.Ramp(0.5, TO_VOLTS), Math.max(RISE_SECONDS, RISE_READINGS / perSecond), meter));
        PeakFinder finder = Heard.of(Seek.PEAK, longer.readings()).finder;
        assertEquals(TO_VOLTS, finder.smoothed(), FOLLOWED * TO_VOLTS);
        assertTrue(finder.trend() == Trend.RISING || perSecond < SHOWS_SOON_PER_SECOND);
    }

    @Provide
    Arbitrary<Trace> plausible() {
        return Traces.plausible();
    }

    @Provide
    Arbitrary<Double> rates() {
        return Traces.rates();
    }

    @Provide
    Arbitrary<Stamps> stamps() {
        return Traces.stamps();
    }

    @Law
    void readingsThatAreNotTrustedChangeNothing(
            @ForAll("any") Trace trace, @ForAll Seek seek, @ForAll Condition condition) {
        Assume.that(!condition.isTrusted());
        List<Reading> mixed = new ArrayList<>();
        for (Reading reading : trace.readings()) {
            mixed.add(reading);
            mixed.add(new Reading(reading.tNanos() + 1, 1e6, condition));
        }
        Heard plain = Heard.of(seek, trace.readings());
        Heard disturbed = Heard.of(seek, mixed);
        assertEquals(plain.finder.best(), disturbed.finder.best());
        assertEquals(plain.told.all, disturbed.told.all);
    }

    /** Each stream has a finder of its own: whatever else is watched at the same time changes nothing. */
    @Law
    void isHeardTheSameBesideAnother(@ForAll("any") Trace trace, @ForAll("any") Trace other) {
        Heard alone = Heard.of(Seek.PEAK, trace.readings());
        Heard beside = new Heard(PeakSettings.defaults());
        Heard neighbour = new Heard(PeakSettings.defaults());
        Iterator<Reading> others = other.readings().iterator();
        for (Reading reading : trace.readings()) {
            if (others.hasNext()) {
                neighbour.hear(others.next());
            }
            beside.hear(reading);
        }
        assertEquals(alone.told.all, beside.told.all);
        assertEquals(alone.finder.best(), beside.finder.best());
    }

    @Law
    void isForgottenByARestart(@ForAll("any") Trace trace, @ForAll Seek seek) {
        PeakFinder fresh = PeakFinder.create(PeakSettings.defaults().withSeek(seek), new Told());
        PeakFinder finder = Heard.of(seek, trace.readings()).finder;
        finder.restart();
        assertEquals(fresh.best(), finder.best());
        assertEquals(fresh.smoothed(), finder.smoothed());
        assertEquals(fresh.ofBest(), finder.ofBest());
        assertEquals(fresh.trend(), finder.trend());
        assertEquals(fresh.belowBestDb(), finder.belowBestDb());
    }
}
