package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Readings.resonance;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is told at a pass and behind it, whatever the hand does. */
class AfterThePassTest {

    private static final int HANDS = 40;
    private static final double[] RATES = {3, 10, 50};

    /** Three adjusters one after the other, each turned to and fro with rests, at another height each time. */
    private static Told threeAdjusters(double rate, double noise, long seed) {
        Told told = new Told();
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
        Readings meter = new Readings(finder, rate, noise);
        SplittableRandom random = new SplittableRandom(seed);
        for (int adjuster = 0; adjuster < 3; adjuster++) {
            finder.restart();
            turnToAndFro(meter, random);
        }
        return told;
    }

    private static void turnToAndFro(Readings meter, SplittableRandom random) {
        double height = random.nextDouble(0.6, 1.2);
        double place = random.nextDouble(-1.5, 1.5);
        for (int stretch = 0; stretch < 8; stretch++) {
            double from = place;
            double begin = meter.seconds();
            double speed = random.nextInt(3) == 0 ? 0 : random.nextDouble(-0.4, 0.4);
            meter.follow(random.nextDouble(0.5, 3), t -> height / Math.hypot(1, from + speed * (t - begin)));
            place = from + speed * (meter.seconds() - begin);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.000_5, 0.003_5, 0.02, 0.05})
    void aPassIsNeverToldWithoutADrop(double noise) {
        long passes = 0;
        for (long seed = 1000; seed < 1000 + HANDS; seed++) {
            for (double rate : RATES) {
                Told told = threeAdjusters(rate, noise, seed);
                for (Told.Word word : told.all) {
                    assertTrue(!word.word().equals("passed") || word.db() > 0, "seed " + seed + ": " + word);
                }
                passes += told.count("passed");
            }
        }
        assertTrue(passes > HANDS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 50})
    void aSlugThatRestsBehindThePeakIsNotToldToTurn(double rate) {
        for (int tenths = 100; tenths < 130; tenths++) {
            double stop = tenths / 10.0;
            Told told = new Told();
            Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), rate, 0.003_5);
            meter.rest(1, resonance(9, 4).applyAsDouble(1)).follow(stop - 1, resonance(9, 4));
            meter.rest(20, resonance(9, 4).applyAsDouble(stop));
            long late = told.all.stream()
                    .filter(w -> w.word().equals("wrong-way") && w.tNanos() / 1e9 > stop + 1)
                    .count();
            assertEquals(0, late, "stopped at " + stop + ": " + told.all);
        }
    }

    @Test
    void aSlugThatGoesOnFallingIsToldToTurn() {
        Told told = new Told();
        Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, 0.003_5);
        meter.rest(1, resonance(9, 4).applyAsDouble(1)).follow(17, resonance(9, 4));
        assertEquals(1, told.count("passed"));
        assertTrue(told.count("wrong-way") >= 1);
    }

    @Test
    void whoStopsShortOfThePeakIsToldWhatIsMissing() {
        Told told = new Told();
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
        double shortBy = 0.26;
        Readings meter = new Readings(finder, 50, 0.0005).follow(10, resonance(8, 3));
        double begin = meter.seconds();
        meter.follow(0.4, t -> 1 / Math.hypot(1, 2.0 / 3 - (t - begin))).rest(6, 1 / Math.hypot(1, shortBy));
        assertEquals(List.of("passed", "stopped-short"), told.words());
        double missingDb = 20 * Math.log10(Math.hypot(1, shortBy));
        assertEquals(missingDb, told.first("stopped-short").value(), 0.03);
    }

    /** A tenth of a half-width a second, 5 percent noise: the speed of the fall never shows within a second. */
    @Test
    void whoGoesOnFallingIsToldToTurnThroughHeavyNoiseToo() {
        for (int hand = 0; hand < HANDS; hand++) {
            double top = 16 + 0.05 * hand;
            Told told = new Told();
            Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, 0.05);
            meter.rest(1, resonance(top, 10).applyAsDouble(1)).follow(50, resonance(top, 10));
            double seconds =
                    (told.first("wrong-way").tNanos() - told.first("passed").tNanos()) / 1e9;
            assertTrue(seconds < 11, "top at " + top + ": told after " + seconds + " s");
        }
    }

    /** Nobody turns round within a third of a second: what rises on at once was a dip of the signal. */
    @Test
    void aDipOnTheWayUpIsTakenBackAndTheTopIsTold() {
        Told told = new Told();
        Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, 0.001);
        meter.rest(1, resonance(12, 6).applyAsDouble(1))
                .follow(15, t -> dip(t) * resonance(12, 6).applyAsDouble(t));
        assertEquals(List.of("passed", "reversed", "passed"), told.words().subList(0, 3), told.all.toString());
        assertTrue(told.all.get(1).tNanos() - told.all.get(0).tNanos() < 0.3e9, told.all.toString());
        assertEquals(1, told.all.get(2).value(), 0.003);
    }

    /** Five percent down and up again between 10.0 and 10.3 s. */
    private static double dip(double seconds) {
        return 1 - 0.05 * Math.max(0, 1 - Math.abs(seconds - 10.15) / 0.15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.000_5, 0.003_5})
    void aHandAtRestIsHeldAsSoonAsTheDwellIsOver(double noise) {
        Told told = new Told();
        Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, noise);
        meter.rest(1, resonance(5, 1).applyAsDouble(1));
        while (told.count("passed") == 0) {
            meter.follow(0.02, resonance(5, 1));
        }
        double turned = meter.seconds() + 0.3;
        meter.follow(0.3, resonance(5, 1));
        while (told.count("returned") == 0) {
            meter.follow(0.02, resonance(2 * turned - 5, 1));
        }
        meter.follow(0.3, resonance(2 * turned - 5, 1));
        meter.rest(3, 1);
        double dwelt = (told.first("held").tNanos() - told.first("returned").tNanos()) / 1e9;
        assertTrue(dwelt < 2.1, "held after " + dwelt + " s");
    }
}
