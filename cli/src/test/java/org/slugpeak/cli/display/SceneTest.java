package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Topics;
import org.slugpeak.core.safety.SafeHands;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SeekCommand;
import org.slugpeak.core.session.StepCommand;
import org.slugpeak.core.steps.StepsBack;

class SceneTest {

    private final SceneKeeper keeper = new SceneKeeper();

    @BeforeEach
    void start() {
        keeper.take(Sessions.start(Seek.PEAK));
    }

    private Verdict.Call call() {
        return keeper.scene().verdict().call();
    }

    @Test
    void theVerdictFollowsTheTurning() {
        assertEquals(Verdict.Call.WAIT, call());
        keeper.take(reading(0, 0.5, 0.5, Trend.STEADY));
        assertEquals(Verdict.Call.TURN, call());
        keeper.take(new Passed(seconds(1), 0.9, seconds(0.9), 0.2));
        assertEquals(Verdict.Call.BACK, call());
        keeper.take(new Returned(seconds(2), 0.9, 0));
        assertEquals(Verdict.Call.STOP, call());
        keeper.take(new Held(seconds(4), 0.9, 0));
        assertEquals(Verdict.Call.HELD, call());
        keeper.take(new Adjuster(seconds(5), "T2 top", Adjuster.Action.BEGIN, 0.9, Double.NaN, Double.NaN));
        assertEquals(Verdict.Call.TURN, call());
        assertEquals("T2 top", keeper.scene().adjuster());
    }

    @Test
    void stepsBackStandUntilTheReadingComesNearerAndFallWithTheValueThatBroughtThem() {
        StepsBack back = new StepsBack(1.4, 0.2, 0.91, 0.002);
        keeper.take(new Passed(seconds(1), 0.9, 0, 0.2, Optional.of(back)));
        keeper.take(reading(1, 0.88, 0.9, Trend.FALLING));
        assertEquals(
                "past it: back 1.4 steps (+-0.2), 0.2 dB; the peak is 0.9100 V (+-0.0020)",
                SceneWords.verdict(keeper.scene()));
        keeper.take(reading(2, 0.89, 0.9, Trend.RISING));
        assertEquals("past it: back, 0.1 dB", SceneWords.verdict(keeper.scene()));
        keeper.take(new Mark(seconds(2), StepCommand.UNDO));
        assertEquals(Verdict.Call.TURN, call());
    }

    @Test
    void whilePastTheSentenceKeepsCountOfTheWayBack() {
        keeper.take(new Passed(seconds(1), 1.0, seconds(0.9), 0.2));
        keeper.take(reading(1.1, 0.891, 1.0, Trend.FALLING));
        assertEquals("past it: back, 1.0 dB", SceneWords.sentence(keeper.scene()));
        keeper.take(reading(1.3, 0.966, 1.0, Trend.RISING));
        assertEquals("past it: back, 0.3 dB", SceneWords.sentence(keeper.scene()));
    }

    @Test
    void aBetterReadingThanEverOvertakesAnOldVerdict() {
        keeper.take(reading(0, 0.5, 0.5, Trend.STEADY));
        keeper.take(new NoPeak(seconds(1), NoPeakReason.REVERSED));
        keeper.take(reading(1.1, 0.45, 0.5, Trend.RISING));
        assertEquals(Verdict.Call.NO_PEAK, call(), "still below the best");
        keeper.take(reading(1.2, 0.55, 0.55, Trend.RISING));
        assertEquals(Verdict.Call.TURN, call());
    }

    @Test
    void fallingFromTheStartIsAVerdictOfItsOwn() {
        keeper.take(new Advice(0, "wrong-way", "falling from the start: turn the other way", 0.4));
        assertEquals(Verdict.Call.OTHER_WAY, call());
    }

    @Test
    void whoStoppedShortIsToldToTurnAndHowMuchIsMissing() {
        keeper.take(new Returned(seconds(1), 0.5, 0.1));
        keeper.take(new Advice(
                seconds(4), "stopped-short", "still 0.29 dB from the best: turn on a little, or back", 0.29));
        assertEquals(Verdict.Call.TURN, call());
        assertTrue(SceneWords.sentence(keeper.scene()).contains("0.29 dB from the best"));
    }

    @Test
    void aRemarkFadesAfterEightSecondsOfReadings() {
        keeper.take(new Advice(seconds(10), "turn-slower", "turn 2.0 times slower for this meter", 2));
        keeper.take(reading(17.9, 0.5, 0.5, Trend.STEADY));
        assertTrue(keeper.scene().note().isPresent());
        keeper.take(reading(18.1, 0.5, 0.5, Trend.STEADY));
        assertTrue(keeper.scene().note().isEmpty());
    }

    private boolean isAsked() {
        return keeper.scene().request().isPresent();
    }

    private void advise(double seconds, String topic) {
        keeper.take(new Advice(seconds(seconds), topic, "halve the generator", Double.NaN));
    }

    @Test
    void aQuestionStandsUntilTheCheckIsOver() {
        advise(1, "ask");
        assertEquals("halve the generator", SceneWords.sentence(keeper.scene()));
        keeper.take(reading(20, 0.5, 0.5, Trend.FALLING));
        assertTrue(isAsked());
        advise(21, "check-over");
        assertFalse(isAsked());
    }

    @Test
    void aQuestionGoesWhenTheCheckIsDropped() {
        advise(1, "ask");
        keeper.take(new Mark(seconds(2), LevelCommand.cancel().text()));
        assertFalse(isAsked());
    }

    @Test
    void whatToTurnStandsUntilItIsTurned() {
        advise(1, Topics.TURN);
        keeper.take(reading(30, 0.5, 0.5, Trend.STEADY));
        assertTrue(isAsked());
        keeper.take(reading(31, 0.6, 0.6, Trend.RISING));
        assertFalse(isAsked());
    }

    @Test
    void whatToTurnCanBeReadEvenIfTheHandMovesAlready() {
        advise(1, Topics.TURN);
        keeper.take(reading(2.9, 0.6, 0.6, Trend.RISING));
        assertTrue(isAsked());
        keeper.take(reading(3.1, 0.7, 0.7, Trend.RISING));
        assertFalse(isAsked());
    }

    @Test
    void aResistorIsAskedForUntilTheAdjusterBegins() {
        keeper.take(new Advice(0, Topics.DAMPING, SafeHands.at("put 22 kohm across T1 secondary"), 22e3));
        assertEquals(SafeHands.at("put 22 kohm across T1 secondary"), SceneWords.sentence(keeper.scene()));
        keeper.take(reading(4, 0.0, 0.9, Trend.FALLING));
        assertTrue(isAsked());
        keeper.take(new Adjuster(seconds(5), "T1 top", Adjuster.Action.BEGIN, 0.9, Double.NaN, Double.NaN));
        assertFalse(isAsked());
    }

    @Test
    void aPlanCanChangeWhatIsSought() {
        keeper.take(new Mark(seconds(1), SeekCommand.text(Seek.DIP)));
        assertEquals(Seek.DIP, keeper.scene().seek());
    }

    @ParameterizedTest
    @CsvSource({"0,1", "24,0", "60,0"})
    void theBarIsFullAtTheBestAndEmptyFarAway(double distanceDb, double filled) {
        assertEquals(filled, BarScale.filled(distanceDb), 1e-12);
    }

    @Test
    void theBarNeverGrowsWithDistanceAndIsFinestAtTheBest() {
        double before = BarScale.filled(0);
        double stepBefore = Double.MAX_VALUE;
        for (double distanceDb = 0.1; distanceDb < 24; distanceDb += 0.1) {
            double filled = BarScale.filled(distanceDb);
            assertTrue(filled < before);
            assertTrue(before - filled < stepBefore);
            stepBefore = before - filled;
            before = filled;
        }
    }

    @Test
    void aTenthOfADecibelMovesTheBarOnTheSmallestWindow() {
        int cells = 40 - 7 - 1;
        assertTrue(cells * (BarScale.filled(0) - BarScale.filled(0.1)) >= 1);
    }

    @ParameterizedTest
    @CsvSource({
        "0.8123,0.87,V,0.812 V",
        "-0.8123,0.87,V,-0.812 V",
        "0.0123,0.05,V,12.30 mV",
        "0.000012,0.00002,V,12.00 uV",
        "1.2343,2,V,1.234 V",
        "12.345,20,V,12.35 V",
        "1234.4,2000,Hz,1234 Hz",
        "512,900,'',512.0",
        "12345,20000,'',12345",
        "0.00001,0.5,V,0.000 V"
    })
    void aReadingHasTheDigitsItsSizeDeserves(double value, double size, String unit, String written) {
        assertEquals(written, Figures.of(value, size, unit).toString());
    }
}
