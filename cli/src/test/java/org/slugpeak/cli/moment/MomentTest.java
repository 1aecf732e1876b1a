package org.slugpeak.cli.moment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.steps.StepsBack;

class MomentTest {

    private static final PlanStep STEP = new PlanStep(
            "T2 top",
            Goal.PEAK,
            new Setup(
                    OptionalDouble.empty(),
                    "",
                    "",
                    "",
                    OptionalDouble.empty(),
                    "",
                    "",
                    Optional.empty(),
                    HighTension.POSSIBLE),
            false,
            Optional.empty(),
            Acceptance.MAXIMUM,
            List.of());

    private final MomentKeeper keeper = new MomentKeeper();

    @BeforeEach
    void start() {
        keeper.take(Sessions.start(Seek.PEAK));
    }

    private Act call() {
        return keeper.moment().verdict().act();
    }

    /** The finder rests during a check, and its smoothed reading with it; who is to halve the generator wants to see that it falls. */
    @Test
    void whileSomethingIsAskedTheReadingIsShownAsItIsRead() {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        keeper.take(new Request.Asked(Sessions.seconds(1), CheckKind.LEVEL, 0));
        Reading half = Reading.of(Sessions.seconds(2), 0.4);
        keeper.take(new ReadingTaken(half, 0.8, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY));
        assertEquals(0.4, keeper.moment().level().value(), 0);
        keeper.take(new ReadingTaken(half, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY));
        assertEquals("0.400 V", MomentWords.reading(keeper.moment()).toString());
        keeper.take(new Request.CheckOver(Sessions.seconds(3)));
        keeper.take(Sessions.reading(4, 0.79, 0.8, Trend.STEADY));
        assertEquals(0.79, keeper.moment().level().value(), 0);
    }

    @Test
    void theVerdictFollowsTheTurning() {
        assertEquals(Act.WAIT, call());
        keeper.take(reading(0, 0.5, 0.5, Trend.STEADY));
        assertEquals(Act.TURN, call());
        keeper.take(new Passed(seconds(1), 0.9, seconds(0.9), 0.2));
        assertEquals(Act.BACK, call());
        keeper.take(new Returned(seconds(2), 0.9, 0));
        assertEquals(Act.STOP, call());
        keeper.take(new Held(seconds(4), 0.9, 0));
        assertEquals(Act.HELD, call());
        keeper.take(new Adjuster(seconds(5), "T2 top", Adjuster.Action.BEGIN, 0.9, Double.NaN, Double.NaN));
        assertEquals(Act.TURN, call());
        assertEquals("T2 top", keeper.moment().adjuster());
    }

    @Test
    void stepsBackStandUntilTheReadingComesNearerAndFallWithTheValueThatBroughtThem() {
        StepsBack back = new StepsBack(1.4, 0.2, 0.91, 0.002);
        keeper.take(new Passed(seconds(1), 0.9, 0, 0.2, Optional.of(back)));
        keeper.take(reading(1, 0.88, 0.9, Trend.FALLING));
        assertEquals(
                "past it: back 1.4 steps (+-0.2), 0.2 dB; the peak is 0.9100 V (+-0.0020)",
                MomentWords.verdict(keeper.moment()));
        keeper.take(reading(2, 0.89, 0.9, Trend.RISING));
        assertEquals("past it: back, 0.1 dB", MomentWords.verdict(keeper.moment()));
        keeper.take(new Said.Command(seconds(2), new Instruction.TakeBack()));
        assertEquals(Act.TURN, call());
    }

    @Test
    void whilePastTheSentenceKeepsCountOfTheWayBack() {
        keeper.take(new Passed(seconds(1), 1.0, seconds(0.9), 0.2));
        keeper.take(reading(1.1, 0.891, 1.0, Trend.FALLING));
        assertEquals("past it: back, 1.0 dB", MomentWords.sentence(keeper.moment()));
        keeper.take(reading(1.3, 0.966, 1.0, Trend.RISING));
        assertEquals("past it: back, 0.3 dB", MomentWords.sentence(keeper.moment()));
    }

    @Test
    void aBetterReadingThanEverOvertakesAnOldVerdict() {
        keeper.take(reading(0, 0.5, 0.5, Trend.STEADY));
        keeper.take(new NoPeak(seconds(1), NoPeakReason.REVERSED));
        keeper.take(reading(1.1, 0.45, 0.5, Trend.RISING));
        assertEquals(Act.NO_PEAK, call(), "still below the best");
        keeper.take(reading(1.2, 0.55, 0.55, Trend.RISING));
        assertEquals(Act.TURN, call());
    }

    @Test
    void fallingFromTheStartIsAVerdictOfItsOwn() {
        keeper.take(new Finding.Hinted(0, Hint.WRONG_WAY, 0.4));
        assertEquals(Act.OTHER_WAY, call());
    }

    @Test
    void whoStoppedShortIsToldToTurnAndHowMuchIsMissing() {
        keeper.take(new Returned(seconds(1), 0.5, 0.1));
        keeper.take(new Finding.Hinted(seconds(4), Hint.STOPPED_SHORT, 0.29));
        assertEquals(Act.TURN, call());
        assertTrue(MomentWords.sentence(keeper.moment()).contains("0.29 dB from the best"));
    }

    @Test
    void aRemarkFadesAfterEightSecondsOfReadings() {
        keeper.take(new Finding.Hinted(seconds(10), Hint.TURN_SLOWER, 2));
        keeper.take(reading(17.9, 0.5, 0.5, Trend.STEADY));
        assertTrue(keeper.moment().note().isPresent());
        keeper.take(reading(18.1, 0.5, 0.5, Trend.STEADY));
        assertTrue(keeper.moment().note().isEmpty());
    }

    private boolean isAsked() {
        return keeper.moment().toDo().isPresent();
    }

    private void ask(double seconds) {
        keeper.take(new Request.Asked(seconds(seconds), CheckKind.LEVEL, 0));
    }

    private void askToTurn(double seconds) {
        keeper.take(new Request.Turn(seconds(seconds), STEP));
    }

    @Test
    void aQuestionStandsUntilTheCheckIsOver() {
        ask(1);
        assertEquals("halve the generator", MomentWords.sentence(keeper.moment()));
        keeper.take(reading(20, 0.5, 0.5, Trend.FALLING));
        assertTrue(isAsked());
        keeper.take(new Request.CheckOver(seconds(21)));
        assertFalse(isAsked());
    }

    @Test
    void aQuestionGoesWhenTheCheckIsDropped() {
        ask(1);
        keeper.take(new Said.Command(seconds(2), new Instruction.Level(LevelCommand.cancel())));
        assertFalse(isAsked());
    }

    @Test
    void whatToTurnStandsUntilItIsTurned() {
        askToTurn(1);
        keeper.take(reading(30, 0.5, 0.5, Trend.STEADY));
        assertTrue(isAsked());
        keeper.take(reading(31, 0.6, 0.6, Trend.RISING));
        assertFalse(isAsked());
    }

    @Test
    void whatToTurnCanBeReadEvenIfTheHandMovesAlready() {
        askToTurn(1);
        keeper.take(reading(2.9, 0.6, 0.6, Trend.RISING));
        assertTrue(isAsked());
        keeper.take(reading(3.1, 0.7, 0.7, Trend.RISING));
        assertFalse(isAsked());
    }

    @Test
    void aResistorIsAskedForUntilTheAdjusterBegins() {
        Optional<Damping> resistor = Optional.of(new Damping("T1 secondary", 22e3, false));
        keeper.take(new Request.SetUp(0, new Preparation(Optional.empty(), false, false, Optional.empty(), resistor)));
        assertEquals(
                "set OFF, unplug, discharge, measure under 30 V; put 22 kohm across T1 secondary; hands away; set ON",
                MomentWords.sentence(keeper.moment()));
        keeper.take(reading(4, 0.0, 0.9, Trend.FALLING));
        assertTrue(isAsked());
        keeper.take(new Adjuster(seconds(5), "T1 top", Adjuster.Action.BEGIN, 0.9, Double.NaN, Double.NaN));
        assertFalse(isAsked());
    }

    @Test
    void aPlanCanChangeWhatIsSought() {
        keeper.take(new Said.Command(seconds(1), new Instruction.Find(Seek.DIP)));
        assertEquals(Seek.DIP, keeper.moment().seek());
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
