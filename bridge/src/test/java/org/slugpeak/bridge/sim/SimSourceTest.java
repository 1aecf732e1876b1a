package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;

class SimSourceTest {

    private static List<ReadingTaken> readings(List<SessionRecord> records) {
        return records.stream()
                .filter(ReadingTaken.class::isInstance)
                .map(ReadingTaken.class::cast)
                .toList();
    }

    @Test
    void theSameSeedGivesTheSameSessionAndAnotherSeedAnother() throws Exception {
        List<SessionRecord> one = SimRun.of(SimSource.open("", 1, Tempo.unlimited()), 60);
        assertEquals(one, SimRun.of(SimSource.open("", 1, Tempo.unlimited()), 60));
        assertNotEquals(one, SimRun.of(SimSource.open("", 2, Tempo.unlimited()), 60));
    }

    @Test
    void anUnknownBenchIsRefusedWithTheNamesOfTheOthers() {
        BadConfiguration refused =
                assertThrows(BadConfiguration.class, () -> SimSource.open("lathe", 1, Tempo.unlimited()));
        assertTrue(refused.getMessage().contains("sim:tarnfield"), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"tarnfield, 49.3", "multimeter, 3", "sound, 20", "still, 49.3"})
    void everyMeterReadsAtItsRate(String name, double perSecond) throws Exception {
        List<ReadingTaken> readings = readings(SimRun.of(SimSource.open(name, 1, Tempo.unlimited()), 20));
        double seconds = readings.get(readings.size() - 1).tNanos() / 1e9;
        assertTrue(seconds > 19);
        double silent = name.equals("multimeter") ? 3 : 0;
        assertEquals(perSecond * seconds, readings.size() - 1, 1 + silent);
    }

    @ParameterizedTest
    @CsvSource({"tarnfield", "multimeter", "sound"})
    void theHandFindsAPeakWithEveryMeter(String name) throws Exception {
        SimSource source = SimSource.open(name, 1, Tempo.unlimited());
        List<SessionRecord> records = SimRun.of(source, 120);
        assertTrue(records.stream().anyMatch(Held.class::isInstance));
    }

    @Test
    void theMultimeterShowsWholeMillivoltsOnly() throws Exception {
        for (ReadingTaken taken : readings(SimRun.of(SimSource.open("multimeter", 1, Tempo.unlimited()), 60))) {
            double millivolts = taken.reading().value() * 1e3;
            assertEquals(Math.rint(millivolts), millivolts, 1e-6);
        }
    }

    @Test
    void theSoundCardSeesAlternatingVolts() throws Exception {
        assertEquals(
                Measurand.AC_VOLTS,
                SimSource.open("sound", 1, Tempo.unlimited()).measurand());
        assertEquals(
                Measurand.DC_VOLTS,
                SimSource.open("still", 1, Tempo.unlimited()).measurand());
    }

    @Test
    void aClosedSourceHasEnded() throws Exception {
        SimSource source = SimSource.open("", 1, Tempo.unlimited());
        source.close();
        assertEquals(Progress.ENDED, source.poll(0, new Listening(source.hand())));
    }

    @Test
    void itNeverRunsAheadOfItsPace() throws Exception {
        AtomicLong now = new AtomicLong(1_000);
        SimSource source = SimSource.open("still", 1, Tempo.ofClock(now::get, 4));
        Listening listening = new Listening(source.hand());
        assertEquals(Progress.IDLE, source.poll(0, listening));
        for (int second = 1; second <= 5; second++) {
            now.addAndGet(1_000_000_000L);
            while (source.poll(0, listening) == Progress.MORE) {
                assertTrue(listening.readings <= 4 * 50 * second);
            }
            assertEquals(4 * 49.3 * second, listening.readings, 2);
        }
    }
}
