package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

class LinesTest {

    private static final PlanStep STEP = new PlanStep(
            "T2 top",
            Goal.PEAK,
            new Setup(
                    OptionalDouble.of(455e3),
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

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);

    private List<String> said() {
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Nested
    class ForAScreenReader {

        private final RecordSink lines = new PlainLines(out);

        @Test
        void whileTurningTheDistanceIsSaidOnceUntilItIsAnother() {
            lines.take(Sessions.start(Seek.PEAK));
            for (int i = 0; i <= 200; i++) {
                lines.take(reading(i * 0.05, i < 100 ? 0.5 : 0.25, 1.0, Trend.FALLING));
            }
            List<String> said = said();
            assertEquals("turn slowly, looking for the peak", said.get(1));
            assertEquals(
                    List.of("6.02 dB below best, falling: further", "12.04 dB below best, falling: further"),
                    said.subList(2, said.size()));
        }

        @Test
        void aClimbIsSaidOnceAndNoiseIsNotSaidAtAll() {
            lines.take(Sessions.start(Seek.PEAK));
            for (int i = 0; i <= 400; i++) {
                double value = 0.5 + 0.001 * i;
                lines.take(reading(i * 0.05, value, value, Trend.RISING));
            }
            for (int i = 0; i <= 400; i++) {
                boolean up = i / 40 % 2 == 0;
                lines.take(reading(20 + i * 0.05, up ? 0.9 : 0.895, 0.9, up ? Trend.RISING : Trend.FALLING));
            }
            assertEquals(
                    1, said().stream().filter(line -> line.endsWith("closer")).count(), said().toString());
            assertEquals(3, said().size(), said().toString());
        }

        @Test
        void atRestNothingIsSaid() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(reading(0, 0.5, 0.5, Trend.STEADY));
            int before = said().size();
            for (int i = 1; i < 600; i++) {
                lines.take(reading(i * 0.1, 0.5, 0.5, Trend.STEADY));
            }
            assertEquals(before, said().size());
        }

        /** As hum on the reading makes it: three verdicts a second for a minute. */
        @Test
        void verdictsThatKeepChangingAreSaidLessAndLess() {
            lines.take(Sessions.start(Seek.PEAK));
            for (int i = 0; i < 90; i++) {
                double t = i * 2 / 3.0;
                lines.take(new Passed(seconds(t), 0.9, seconds(t), 0.6));
                lines.take(reading(t + 0.1, 0.8, 0.9, Trend.STEADY));
                lines.take(new Finding.Hinted(seconds(t + 0.2), Hint.BEST_AGED, 0.2));
                lines.take(new Returned(seconds(t + 0.3), 0.899, 0.04));
                lines.take(reading(t + 0.4, 0.9, 0.9, Trend.STEADY));
            }
            int inAMinute = said().size();
            assertTrue(inAMinute >= 6 && inAMinute <= 24, said().toString());
        }

        @Test
        void aVerdictThatWasHeldBackIsSaidWhenItStillHolds() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(new Passed(seconds(1), 0.9, seconds(1), 0.6));
            lines.take(new Returned(seconds(1.5), 0.899, 0.04));
            lines.take(new Passed(seconds(2), 0.9, seconds(1), 0.6));
            assertEquals("on the peak: stop, 0.04 dB short", said().get(2));
            assertEquals(3, said().size());
            lines.take(reading(2.6, 0.8, 0.9, Trend.STEADY));
            assertEquals("past it: back, 1.0 dB", said().get(3));
        }

        @Test
        void theNextAdjusterIsHeardAtOnceHoweverRestlessTheLastOneWas() {
            for (int i = 0; i < 20; i++) {
                lines.take(new Passed(seconds(i * 0.1), 0.9, 0, 0.6));
            }
            int before = said().size();
            lines.take(new Adjuster(seconds(2), "T1 top", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
            lines.take(new Passed(seconds(2.1), 0.9, 0, 0.6));
            assertEquals(before + 2, said().size());
        }

        @Test
        void eachEventIsOneShortSentence() {
            lines.take(Sessions.start(Seek.PEAK, "/dev/ttyUSB0"));
            lines.take(new Adjuster(0, "T1 top", Adjuster.Action.BEGIN, Double.NaN, Double.NaN, Double.NaN));
            lines.take(new Passed(seconds(1), 0.9, seconds(0.5), 0.61));
            lines.take(new Returned(seconds(2), 0.899, 0.04));
            lines.take(new Held(seconds(4), 0.9, 0));
            lines.take(new TwoPeaks(seconds(5), 0.9, 0.95, 1.24));
            lines.take(new NoPeak(seconds(6), NoPeakReason.END_OF_TRAVEL));
            lines.take(new Overload(seconds(7), Overload.Cause.CLIPPING, Double.NaN));
            lines.take(new OverloadCleared(seconds(8)));
            lines.take(new Weak(seconds(9), 11.6));
            lines.take(new Drift(seconds(10), -0.25, "dB"));
            lines.take(new Link.Changed(seconds(11), Link.State.LOST, new LinkDetail.Told("unplugged")));
            lines.take(new Link.Changed(seconds(12), Link.State.RESUMED, LinkDetail.NONE));
            lines.take(new Said.Note(seconds(13), "hum"));
            lines.take(new Said.Note(seconds(13), "level: check rest"));
            lines.take(new Said.Command(seconds(13), new Instruction.Level(LevelCommand.check(CheckKind.REST))));
            lines.take(new Adjuster(seconds(14), "T1 top", Adjuster.Action.DONE, 0.5, 0.9, 5.1));
            lines.take(new Finding.Hinted(seconds(15), Hint.TURN_SLOWER, 2));
            lines.take(new SessionEnd(seconds(16), 320, EndReason.Known.QUIT));
            assertEquals(
                    List.of(
                            "dc voltage from /dev/ttyUSB0",
                            "now: T1 top",
                            "past it: back, 0.6 dB",
                            "on the peak: stop, 0.04 dB short",
                            "held: recorded at 0.900 V",
                            "two peaks, dip of 1.2 dB between: the second is higher",
                            "no peak: end of the travel",
                            "OVERLOAD, clipping: turn the generator or the input level down",
                            "overload gone",
                            "weak, 12 dB over the noise: turn the generator up, or read more slowly",
                            "drifting -0.250 dB a minute, nothing is turned",
                            "LINK LOST: unplugged",
                            "readings again",
                            "hum",
                            "level: check rest",
                            "check of rest: hands off for a moment",
                            "T1 top done, +5.1 dB",
                            "turn 2.0 times slower",
                            "end, 320 readings: quit"),
                    said());
        }

        @Test
        void whatTheUserIsAskedToDoIsSaidAsARequest() {
            Optional<Setup> setup = Optional.of(STEP.setup());
            lines.take(new Request.Asked(seconds(1), CheckKind.LEVEL, 0));
            lines.take(new Request.SetUp(
                    seconds(2), new Preparation(setup, false, false, Optional.empty(), Optional.empty())));
            lines.take(new Request.Turn(seconds(3), STEP));
            assertEquals(
                    List.of("please: halve the generator", "set up: generator 455 kHz", "T2 top: to the maximum"),
                    said());
        }

        @Test
        void whatIsSoughtIsSaidWhenItChangesInTheMiddleOfAPlan() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(new Said.Command(seconds(1), new Instruction.Find(Seek.PEAK)));
            lines.take(new Said.Command(seconds(2), new Instruction.Find(Seek.DIP)));
            assertEquals(2, said().size());
            assertEquals("looking for a dip: less is nearer", said().get(1));
        }

        @Test
        void dipAndZeroSayFirstWhatIsNearer() {
            lines.take(Sessions.start(Seek.DIP));
            lines.take(Sessions.start(Seek.ZERO));
            assertEquals("dc voltage from sim, looking for a dip: less is nearer", said().get(0));
            assertEquals("dc voltage from sim, looking for a zero: nearer to zero is nearer", said().get(1));
        }

        @Test
        void aZeroIsCountedInVoltsBecauseDecibelsHaveNoMeaningThere() {
            lines.take(Sessions.start(Seek.ZERO));
            lines.take(Sessions.zeroReading(0, 0.4, Trend.RISING));
            lines.take(Sessions.zeroReading(2, 0.2, Trend.FALLING));
            lines.take(new Passed(seconds(3), 0, seconds(2.9), Double.NaN));
            lines.take(new Returned(seconds(4), 0.001, Double.NaN));
            assertEquals("past zero: back", said().get(said().size() - 2));
            assertEquals("on zero: stop", said().get(said().size() - 1));
        }
    }

    @Nested
    class ForAPipe {

        private final RecordSink lines = new PipeLines(out);

        @Test
        void everyReadingIsOneLine() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(reading(0, 0.5, 0.5, Trend.STEADY));
            lines.take(reading(12.34, 0.5, 1.0, Trend.FALLING));
            lines.take(Sessions.untrusted(13, Condition.OVER_RANGE, 0.5, 1.0));
            assertEquals("    0.00 s  0.500 V  0.00 dB below best  steady", said().get(1));
            assertEquals("   12.34 s  0.500 V  6.02 dB below best  falling", said().get(2));
            assertEquals("   13.00 s  over-range  6.02 dB below best  steady", said().get(3));
        }

        @Test
        void eventsAreMarkedWithAStar() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(new Passed(seconds(1), 0.9, seconds(0.5), 0.61));
            assertEquals("    1.00 s  * past it: back, 0.6 dB", said().get(1));
        }

        @Test
        void aSessionThatFailsBeforeAnythingCameLeavesTheWordToStandardError() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(new SessionEnd(0, 0, EndReason.Known.FAILED));
            assertTrue(said().isEmpty(), said().toString());
        }

        @Test
        void aSessionThatFailsLaterSaysWhereItEnded() {
            lines.take(Sessions.start(Seek.PEAK));
            lines.take(reading(0, 0.5, 0.5, Trend.STEADY));
            lines.take(new SessionEnd(seconds(1), 1, EndReason.Known.FAILED));
            assertEquals(3, said().size(), said().toString());
        }

        @Test
        void noReadingIsHeldBackInABuffer() {
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            PrintStream buffered =
                    new PrintStream(new java.io.BufferedOutputStream(raw, 1 << 16), false, StandardCharsets.UTF_8);
            RecordSink sink = new PipeLines(buffered);
            sink.take(reading(0, 0.5, 0.5, Trend.STEADY));
            assertTrue(raw.size() > 0);
        }
    }
}
