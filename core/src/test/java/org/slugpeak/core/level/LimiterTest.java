package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.decibel.Decibels;

/**
 * Limiters that were computed apart from this project (shared/reference/fm/limiter.csv, nothing was chosen on it): grid-leak and saturating,
 * read at the grids of the first and of the second stage, 10 uV to 100 mV at the converter.
 */
class LimiterTest {

    /** Readings above rest by the signal, at the grid of the first or the second limiter. */
    private static NavigableMap<Double, Double> readings(String limiter, int column) throws IOException {
        Path table = Path.of(System.getProperty("slugpeak.shared"), "reference", "fm", "limiter.csv");
        NavigableMap<Double, Double> readings = new TreeMap<>();
        try (Stream<String> lines = Files.lines(table)) {
            lines.map(line -> line.split(","))
                    .filter(cells -> cells[0].equals(limiter))
                    .forEach(cells -> readings.put(Double.parseDouble(cells[1]), Double.parseDouble(cells[column])));
        }
        assertTrue(readings.size() > 20, readings.size() + " rows of " + limiter);
        return readings;
    }

    private static double at(NavigableMap<Double, Double> readings, double signalVolts) {
        double low = readings.floorKey(signalVolts);
        double high = readings.ceilingKey(signalVolts);
        double share = low == high ? 0 : Math.log(signalVolts / low) / Math.log(high / low);
        return readings.get(low) * Math.pow(readings.get(high) / readings.get(low), share);
    }

    /** The level check as a user makes it who says done where nothing moves. */
    private static Told halved(double before, double after, double again) {
        Meter meter = new Meter(1, 0.001).command(LevelCommand.check(CheckKind.LEVEL));
        meter.read(2, before).read(1, after).done().read(3, after);
        if (meter.told.all("ask").size() > 1 && meter.told.all("ask").get(1).amount() == 1) {
            meter.read(1, again).done().read(3, again);
        }
        return meter.told;
    }

    @ParameterizedTest
    @CsvSource({"grid-leak, 5, 15", "grid-leak, 8, 10", "saturating, 5, 15", "saturating, 8, 10"})
    void whatAHalvingHardlyChangesIsHeldByALimiterAndWhatFollowsIsNot(String limiter, int column, int fewest)
            throws IOException {
        NavigableMap<Double, Double> readings = readings(limiter, column);
        int told = 0;
        int clean = 0;
        for (double signal : readings.tailMap(4 * readings.firstKey()).keySet()) {
            double first = at(readings, signal / 2);
            double fallDb = Decibels.of(readings.get(signal) / first);
            Told heard = halved(readings.get(signal), first, at(readings, signal / 4));
            String where = limiter + ", " + signal + " V, falls by " + fallDb + " dB";
            if (fallDb < 1.1) {
                told++;
                assertTrue(heard.heard("possible-limiter"), where);
            } else if (fallDb > 6.02) {
                clean++;
                assertFalse(heard.heard("possible-limiter"), where);
            } else if (fallDb > 1.3) {
                assertFalse(heard.heard("possible-limiter"), where);
                assertEquals(fallDb < 5.85, heard.heard("possible-too-strong"), where);
            }
        }
        assertTrue(told + clean >= fewest, told + " limited, " + clean + " clean");
    }

    /** Nobody says done, since nothing has changed: the check is given up, and why it may be is said. */
    @Test
    void aHalvingThatNothingComesOfIsNotPassedOver() {
        Meter meter =
                new Meter(1, 0.001).command(LevelCommand.check(CheckKind.LEVEL)).read(30, 15.29);
        assertEquals(
                List.of("ask", "check-dropped", "possible-limiter", "check-over"),
                meter.told.topics().stream()
                        .filter(topic -> !topic.equals("drift"))
                        .toList());
    }

    @Test
    void aReadingThatFollowsAgainTakesTheWordBack() {
        Meter meter = new Meter(1, 0.001).command(LevelCommand.check(CheckKind.LEVEL));
        meter.read(2, 15.29).done().read(3, 15.28);
        assertTrue(meter.told.heard("possible-limiter"));
        meter.level(2, 1);
        assertTrue(meter.told.heard("no-longer-possible"));
        assertTrue(meter.watch.letsFinderSee());
    }
}
