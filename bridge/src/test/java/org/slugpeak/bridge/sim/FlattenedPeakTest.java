package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.SessionRecord;

/**
 * A generator that is turned up in the middle of the work, in a session that was never told where the meter is, so that nobody asks
 * for less: is the flattened peak told from the ones before it?
 */
class FlattenedPeakTest {

    private static final int SEEDS = 20;

    /** Far from the seeds that the limits were chosen on. */
    private static final long FIRST_SEED = 52_001;

    private static final List<Part> SLUGS = List.of(Part.T2_TOP, Part.T1_TOP, Part.T2_BOTTOM, Part.T1_BOTTOM);

    /** Six slugs that stand well off, one after the other in tune; before the fifth the generator is turned up. */
    private static List<SessionRecord> session(long seed, double timesUp) throws BridgeException {
        SplittableRandom random = new SplittableRandom(seed);
        SimulatedReceiver receiver = new SimulatedReceiver(Tarnfield.design(), Set.of(), random.nextLong());
        Script.prepare(receiver, false, Optional.empty());
        Script.align(receiver);
        SimulatedMeter meter = new SimulatedMeter(MeterModel.CONVERTER, random.split());
        SimulatedHand hand = new SimulatedHand(HandModel.PRACTISED, random.split());
        List<Chore> chores = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Part part = SLUGS.get(i % SLUGS.size());
            double turns = (random.nextBoolean() ? 1 : -1) * random.nextDouble(1.2, 1.8);
            double up = i == 4 ? timesUp : 1;
            chores.add(Chores.set(bench -> {
                receiver.set(part, turns);
                receiver.feed(receiver.generator().times(up));
            }));
            // What steps by itself looks like a fault of the set: here somebody does it.
            chores.add(Chores.begin("set off"));
            chores.add(Chores.rest(1));
            chores.add(new AdjusterChore(receiver, part, hand, new ArrayList<>()));
        }
        OtherHand other = new OtherHand(receiver, hand, random.split());
        return SimRun.of(
                new SimSource(new Bench(receiver, meter, hand, other, chores), Tempo.unlimited()), Double.MAX_VALUE);
    }

    private static int told(double timesUp) throws BridgeException {
        int told = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
            told += widePeaks(session(seed, timesUp)).isEmpty() ? 0 : 1;
        }
        return told;
    }

    private static List<Caution.WidePeak> widePeaks(List<SessionRecord> records) {
        return records.stream()
                .filter(Caution.WidePeak.class::isInstance)
                .map(Caution.WidePeak.class::cast)
                .toList();
    }

    @Test
    void nothingIsSaidWhileTheGeneratorStaysLow() throws BridgeException {
        assertEquals(0, told(1));
    }

    @Test
    void nothingIsSaidOfAGeneratorThatIsRaisedWithinReason() throws BridgeException {
        assertEquals(0, told(1.5));
    }

    @Test
    void fiveTimesTheSignalIsToldInMostSessions(TestReporter reporter) throws BridgeException {
        int told = told(5);
        reporter.publishEntry("told, of " + SEEDS, String.valueOf(told));
        assertTrue(told >= 0.7 * SEEDS, told + " of " + SEEDS);
    }

    @Test
    void tenTimesTheSignalIsToldInMostSessions(TestReporter reporter) throws BridgeException {
        int told = told(10);
        reporter.publishEntry("told, of " + SEEDS, String.valueOf(told));
        assertTrue(told >= 0.7 * SEEDS, told + " of " + SEEDS);
    }
}
