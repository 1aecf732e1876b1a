package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.decibel.Decibels;

/** When less generator is asked for, and how decibels go on across the cut. */
class GeneratorPromptsTest {

    private Meter atDetector() {
        return new Meter(5, 0.001).command(LevelCommand.at(MeterPoint.DETECTOR));
    }

    @Test
    void theCutIsAskedForBeforeTheWindowEnds() {
        Meter meter = atDetector().read(10, at -> 1 + 0.05 * at);
        assertTrue(meter.told.heard("cut-generator"));
        double volts = 1 + 0.05 * meter.told.first("cut-generator").tNanos() / 1e9;
        assertTrue(volts < MeterPoint.DETECTOR.highVolts(), volts + " V");
    }

    @Test
    void thereIsNeverMoreThanOnePromptInThreeSeconds() {
        Meter meter = atDetector().read(60, 2);
        List<Told.Line> prompts = meter.told.all("cut-generator");
        assertTrue(prompts.size() > 1);
        for (int i = 1; i < prompts.size(); i++) {
            assertTrue(prompts.get(i).tNanos() - prompts.get(i - 1).tNanos() >= 3_000_000_000L);
        }
    }

    @Test
    void theWindowOfAPlanIsGuardedWhateverThePoint() {
        Meter meter = new Meter(5, 0.001).command(LevelCommand.below(4));
        assertFalse(meter.read(5, 3.4).told.heard("cut-generator"));
        assertTrue(meter.read(5, 3.6).told.heard("cut-generator"));
    }

    @Test
    void thePromptSaysToWhichReading() {
        Meter meter = new Meter(5, 1e-6).rest(1, -0.2).command(LevelCommand.below(1.5));
        meter.read(1, -1.6);
        assertEquals(-0.2 - 0.7, meter.told.cutTo.get(0), 1e-3, "half of what is above rest");
    }

    @Test
    void anotherPointInheritsNoWindow() {
        Meter meter = new Meter(5, 0.001).command(LevelCommand.below(1.5));
        meter.command(LevelCommand.below(Double.POSITIVE_INFINITY));
        assertFalse(meter.read(30, 50).told.heard("cut-generator"));
    }

    @Test
    void noPromptComesWhereNobodySaidWhereTheMeterIs() {
        assertFalse(new Meter(5, 0.001).read(30, 50).told.heard("cut-generator"));
    }

    /** Both hands rock a gang over a peak: at the top the reading stands for a moment, from a slope on which it fell as fast as by a turn. */
    private static double rocked(double seconds) {
        double sweep = seconds / 1.15;
        double within = sweep - Math.floor(sweep);
        return 1.67 / Math.hypot(1, 2 * within - 1);
    }

    @Test
    void aGangThatIsRockedIsNoTurnOfTheGenerator() {
        for (int seed = 0; seed < 20; seed++) {
            Meter meter = new Meter(seed, 0.004).command(LevelCommand.at(MeterPoint.DETECTOR));
            meter.read(60, GeneratorPromptsTest::rocked);
            assertTrue(meter.told.heard("cut-generator"));
            assertEquals(List.of(), meter.told.all("generator-changed"));
        }
    }

    /** Before it the reading falls and rises alike at the lower end of a sweep, and seems to stand there, 3 dB below the top. */
    @Test
    void aTurnOfTheGeneratorIsSeenWhileTheGangIsRocked() {
        for (int seed = 0; seed < 20; seed++) {
            Meter meter = new Meter(seed, 0.004).command(LevelCommand.at(MeterPoint.DETECTOR));
            meter.read(3 + seed / 10.0, GeneratorPromptsTest::rocked);
            assertTrue(meter.told.heard("cut-generator"));
            meter.read(12, at -> rocked(at) / 2);
            assertEquals(1, meter.told.all("generator-changed").size(), "seed " + seed);
            assertEquals(-6, meter.told.first("generator-changed").amount(), 2.5);
        }
    }

    @Test
    void decibelsGoOnAcrossTheCutWithinATenth() {
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 100; i++) {
            double reads = random.nextDouble(0.4, 0.6);
            Meter meter = new Meter(i, Meter.NOISE).command(LevelCommand.at(MeterPoint.DETECTOR));
            meter.read(2, 1.35);
            double before = meter.watch.toFinder(1.35);
            meter.read(2, 1.35 * reads);
            assertTrue(meter.told.heard("generator-changed"));
            assertEquals(0, db(meter.watch.toFinder(1.35 * reads) / before), 0.1);
        }
    }

    /** And comes to rest 0.4 s after the turn: what the generator did is told from what the slug did, whatever the hand made of the half. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.45, 0.5, 0.55, 0.6})
    void whileTheSlugMovesTheTurnIsKnownWithinTwoTenths(double reads) {
        Meter meter = atDetector().read(3, at -> 1 + 0.15 * at);
        double before = 1.45;
        meter.read(2, at -> (before + 0.15 * Math.min(at, 0.4)) * reads);
        assertTrue(meter.told.heard("generator-changed"));
        assertEquals(0, db(meter.watch.scale() / reads), 0.2);
    }

    @Test
    void anAnnouncedCutNeedsNoPrompt() {
        Meter meter = new Meter(5, 0.001).read(1, 0.8).command(LevelCommand.cut(0.25));
        assertFalse(meter.watch.letsFinderSee());
        meter.read(1, at -> at < 0.4 ? 0.8 : 0.2).read(1, 0.2);
        assertTrue(meter.watch.letsFinderSee());
        assertEquals(0.25, meter.watch.scale(), 0.003);
    }

    @Test
    void turningASlugAwayIsNoCut() {
        Meter meter = atDetector().read(3, 1.4).read(4, at -> 1.4 * Math.exp(-0.2 * at));
        assertFalse(meter.told.heard("generator-changed"));
        assertEquals(1, meter.watch.scale());
    }

    /** Past the top of a circuit, at any speed up to half the power in 0.4 s to either side. */
    @Test
    void turningPastAPeakAfterThePromptIsNoCutHoweverQuickly() {
        for (double halfSeconds = 0.4; halfSeconds < 2; halfSeconds += 0.1) {
            double half = halfSeconds;
            Meter meter = atDetector().read(1, at -> 1.4 / Math.hypot(1, (at - 1) / half));
            assertTrue(meter.told.heard("cut-generator"));
            meter.read(2 * half, at -> 1.4 / Math.hypot(1, at / half)).read(3, 1.4 / Math.hypot(1, 2));
            assertFalse(meter.told.heard("generator-changed"), half + " s");
        }
    }

    /** The prompt that follows at once finds few readings of the time before. */
    @Test
    void turningPastAPeakIsNoCutJustAfterACutEither() {
        Meter meter = atDetector().read(1, 2.8).read(2, 1.4);
        int cuts = meter.told.all("generator-changed").size();
        assertEquals(1, cuts);
        meter.read(0.8, at -> 1.4 / Math.hypot(1, at / 0.4)).read(3, 1.4 / Math.hypot(1, 2));
        assertEquals(cuts, meter.told.all("generator-changed").size());
    }

    @Test
    void aCutIsSeenWhileTheReadingFallsAsTheSlugIsTurnedOn() {
        Meter meter = atDetector().read(1, 1.4).read(0.5, at -> 1.4 / Math.hypot(1, at));
        double before = 1.4 / Math.hypot(1, 0.5);
        meter.read(3, before / 2);
        assertTrue(meter.told.heard("generator-changed"));
    }

    /** The slug alone falls by 0.3 dB in that tenth; five times as much is no slug. */
    @Test
    void aKnobTurnedDownInATenthOfASecondIsACutWhileTheSlugIsTurnedOn() {
        Meter meter = atDetector().read(1, 1.4).read(0.5, at -> 1.4 / Math.hypot(1, at));
        double before = 1.4 / Math.hypot(1, 0.5);
        meter.read(0.1, at -> before * Decibels.ratio(-17 * at)).read(3, before * Decibels.ratio(-1.7));
        assertEquals(-1.7, meter.told.first("generator-changed").amount(), 0.8, "and not the half that was asked for");
    }

    @Test
    void anAnnouncedCutThatNobodyMakesIsSaidAndTheScaleStays() {
        Meter meter = new Meter(5, 0.001).read(1, 0.8).command(LevelCommand.cut(0.25));
        assertFalse(meter.read(3, 0.8).watch.letsFinderSee());
        assertTrue(meter.read(4, 0.8).watch.letsFinderSee());
        assertEquals(1, meter.told.all("generator-unchanged").size());
        assertEquals(1, meter.watch.scale());
    }

    @Test
    void theNextAdjusterStartsWithAFreshScale() {
        Meter meter = new Meter(5, 0.001).read(1, 0.8).command(LevelCommand.cut(0.5));
        meter.read(3, 0.4).watch.adjusterBegun("T1 top");
        assertEquals(1, meter.watch.scale());
    }

    /** A plan may know better than the point how high a reading may rise; a point that is named afterwards has its own window. */
    @Test
    void thePromptComesAtTheWindowThatWasSaidLast() {
        Meter meter = new Meter(1, Meter.NOISE)
                .command(LevelCommand.at(MeterPoint.RATIO_DETECTOR))
                .read(2, 4);
        assertFalse(meter.told.heard("cut-generator"));
        meter.command(LevelCommand.below(3)).read(2, 4);
        assertTrue(meter.told.heard("cut-generator"));
        Meter other = new Meter(1, Meter.NOISE)
                .command(LevelCommand.below(1))
                .command(LevelCommand.at(MeterPoint.RATIO_DETECTOR))
                .read(2, 4);
        assertFalse(other.told.heard("cut-generator"));
    }

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }
}
