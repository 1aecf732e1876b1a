package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

class DemoTest {

    private static Demo demo(long seed) {
        return Demo.create(DemoSettings.ofSeed(seed), Tempo.unlimited(), Narration::name);
    }

    private static List<SessionRecord> play(Demo demo) throws Exception {
        return SimRun.of(demo.source(), Double.MAX_VALUE);
    }

    /** The finder's verdicts, obeyed by a hand of flesh, leave less than the trade's last round. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void leavesLessThanAFifthOfADecibelOnTheTable(long seed) throws Exception {
        Demo demo = demo(seed);
        play(demo);
        double left = demo.outcome().leftDb();
        assertTrue(left < 0.2, "left " + left);
        assertEquals(8, demo.outcome().steps().size());
    }

    @Test
    void takesAboutAMinuteAndAHalfToTwo() throws Exception {
        List<SessionRecord> records = play(demo(1));
        double seconds = records.get(records.size() - 1).tNanos() / 1e9;
        assertTrue(seconds > 80 && seconds < 130, "seconds " + seconds);
    }

    @Test
    void theSameSeedPlaysTheSameDemonstration() throws Exception {
        Demo one = demo(4);
        Demo two = demo(4);
        assertEquals(play(one), play(two));
        assertEquals(one.outcome(), two.outcome());
    }

    @Test
    void theOutcomeIsBeforeAndAfterAsTheDataSheetHasThem() throws Exception {
        Demo demo = demo(2);
        play(demo);
        DemoOutcome outcome = demo.outcome();
        assertEquals(620e-6, outcome.before().sensitivityVolts(), 10e-6);
        assertEquals(79e-6, outcome.after().sensitivityVolts(), 4e-6);
        assertEquals(455e3, outcome.after().centreHz(), 1.5e3);
    }

    @Test
    void theOutcomeHasWhatWasSeededAndWhatTheToolSaidAndWhen() throws Exception {
        Demo demo = Demo.create(DemoSettings.ofSeed(50_003).withFault(Fault.HUM), Tempo.unlimited(), Narration::name);
        List<SessionRecord> said =
                play(demo).stream().filter(Caution.Suspected.class::isInstance).toList();
        assertEquals(said, demo.outcome().suspicions());
        assertEquals(Optional.of(Suspicion.HUM), demo.outcome().meant());
        assertTrue(demo.outcome().suspicions().stream().anyMatch(it -> it.suspicion() == Suspicion.HUM));
    }

    /** A replay has nothing but the log: readings, marks and begun adjusters, in their order. */
    @Test
    void aReplayOfTheLogGivesTheSameRecords() throws Exception {
        List<SessionRecord> live = play(demo(3));
        List<SessionRecord> again = new ArrayList<>();
        Analysis analysis = new Analysis(PeakSettings.defaults(), again::add);
        for (SessionRecord record : live) {
            if (record instanceof ReadingTaken it) {
                analysis.reading(it.reading());
            } else if (record instanceof Said.Note it) {
                analysis.note(it.text());
            } else if (record instanceof Said.Command it) {
                analysis.command(it.instruction());
            } else if (record instanceof Adjuster it && it.action() == Adjuster.Action.BEGIN) {
                analysis.nextAdjuster(it.name());
            } else if (record instanceof Adjuster it) {
                analysis.adjusterEnded(it.action());
            }
        }
        analysis.end(EndReason.Known.DONE);
        assertEquals(live, again);
    }

    @Nested
    class ByKeys {

        private final Demo demo = Demo.create(
                DemoSettings.ofSeed(1).withTurner(DemoSettings.Turner.KEYS), Tempo.unlimited(), Narration::name);
        private final Listening listening = new Listening(demo.source().hand());

        private void playUntilAdjuster(int number) throws Exception {
            while (listening.begun < number && demo.source().poll(0, listening) != Progress.ENDED) {
                assertTrue(listening.readings < 100_000);
            }
        }

        private void playFor(int readings) throws Exception {
            int until = listening.readings + readings;
            while (listening.readings < until) {
                demo.source().poll(0, listening);
            }
        }

        @Test
        void afterHeldTheNextSlugComesByItself() throws Exception {
            playUntilAdjuster(1);
            int readings = listening.readings;
            demo.source().hand().take(new Held(0, 1, 0));
            playUntilAdjuster(2);
            assertTrue(listening.readings - readings < 200, "within four seconds at 50 readings a second");
        }

        @Test
        void aSlugTurnedTheRightWayRaisesTheReading() throws Exception {
            playUntilAdjuster(1);
            playFor(50);
            double before = Math.abs(listening.last);
            demo.turn(120);
            playFor(50);
            assertTrue(Math.abs(listening.last) > before + 0.1);
        }

        @Test
        void nothingFollowsWithinTheBacklash() throws Exception {
            playUntilAdjuster(1);
            demo.turn(90);
            playFor(50);
            double there = Math.abs(listening.last);
            demo.turn(-5);
            playFor(50);
            assertEquals(there, Math.abs(listening.last), 0.02);
        }

        @Test
        void theToolOutMeansTheNextAdjuster() throws Exception {
            playUntilAdjuster(1);
            demo.next();
            playUntilAdjuster(2);
            assertEquals(1, demo.outcome().steps().size());
            assertTrue(demo.outcome().leftDb() > 10);
        }
    }

    @Test
    void everyStepIsSaidInALineBeforeItsAdjusterBegins() throws Exception {
        List<SessionRecord> records = play(demo(1));
        List<String> said = records.stream()
                .filter(Said.Note.class::isInstance)
                .map(record -> ((Said.Note) record).text())
                .toList();
        assertTrue(said.size() >= 9, said.toString());
    }
}
