package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.decibel.Decibels;

/**
 * Valve diodes that were computed apart from this project (shared/reference/detector/halving.csv): clean, and with a gain control that
 * takes some of the first fall away. The border was chosen on the rows that are called joined; Langmuir's exact diode and the plain
 * exponential law are others.
 */
class HalvingsTest {

    /** Readings that stand scatter by about so much, dB. */
    private static final double SCATTER_DB = 0.02;

    /** What the trade's rule wants caught, dB (the first halving hides it). */
    private static final double HIDDEN_DB = 1.4;

    private record Row(String law, double restVolts, double riseVolts, double firstDb, double secondDb) {

        static Row of(String line) {
            String[] cells = line.split(",", -1);
            return new Row(
                    cells[0],
                    Double.parseDouble(cells[3]),
                    Double.parseDouble(cells[5]),
                    Double.parseDouble(cells[7]),
                    Double.parseDouble(cells[8]));
        }

        boolean isUsual() {
            return restVolts <= 0.5
                    && riseVolts >= 0.5
                    && riseVolts <= 1.5
                    && (isJoined() || law.startsWith("langmuir"));
        }

        boolean isJoined() {
            return law.startsWith("joined");
        }

        /** Gain that falls by as many decibels as the control voltage is above its delay, so that {@code hiddenDb} go at first. */
        Halvings compressed(double hiddenDb, double delayVolts, SplittableRandom random) {
            double half = riseVolts / Decibels.ratio(firstDb);
            double quarter = half / Decibels.ratio(secondDb);
            double dbPerVolt = hiddenDb / (above(riseVolts, delayVolts) - above(half, delayVolts));
            double later = dbPerVolt * (above(half, delayVolts) - above(quarter, delayVolts));
            return new Halvings(
                    firstDb - hiddenDb + SCATTER_DB * random.nextGaussian(),
                    OptionalDouble.of(secondDb - later + SCATTER_DB * random.nextGaussian()));
        }

        private static double above(double volts, double delayVolts) {
            return Math.max(0, volts - delayVolts);
        }
    }

    private static List<Row> usualDetectors() throws IOException {
        Path table = Path.of(System.getProperty("slugpeak.shared"), "reference", "detector", "halving.csv");
        try (Stream<String> lines = Files.lines(table)) {
            List<Row> rows = lines.skip(2).map(Row::of).filter(Row::isUsual).toList();
            assertTrue(rows.size() > 150 && rows.stream().anyMatch(row -> !row.isJoined()), rows.size() + " rows");
            return rows;
        }
    }

    @Test
    void noCleanValveDetectorIsBlamed() throws IOException {
        SplittableRandom random = new SplittableRandom(1802);
        for (Row row : usualDetectors()) {
            for (int i = 0; i < 200; i++) {
                assertFalse(row.compressed(0, 0, random).isCompressed(), row.toString());
            }
        }
    }

    @ParameterizedTest(name = "delay {0} V")
    @ValueSource(doubles = {0, 0.2, 0.5, 1})
    void aGainControlThatHidesSomethingIsFound(double delayVolts) throws IOException {
        SplittableRandom random = new SplittableRandom(1803);
        for (Row row : usualDetectors()) {
            for (int i = 0; i < 200 && row.riseVolts() > delayVolts; i++) {
                double hiddenDb = random.nextDouble(HIDDEN_DB, 4);
                Halvings halvings = row.compressed(hiddenDb, delayVolts, random);
                assertTrue(halvings.isCompressed(), hiddenDb + " dB of " + row);
                assertTrue(halvings.slope() < 1, "it is said how much is left: " + halvings.slope());
            }
        }
    }

    @Test
    void aMeterThatFollowsTheGeneratorToTheLetterIsNotBlamed() {
        Halvings straight = new Halvings(6.02, OptionalDouble.of(6.05));
        assertFalse(straight.isCompressed());
        assertEquals(1, straight.slope(), 1e-3);
    }

    @Test
    void whatFallsByLessThanTheGeneratorIsHeldBackWhateverTheSecondHalvingSays() {
        assertTrue(new Halvings(5.8, OptionalDouble.empty()).isCompressed());
        assertTrue(new Halvings(5.8, OptionalDouble.of(5.8)).isCompressed());
        assertFalse(new Halvings(6.0, OptionalDouble.empty()).isCompressed());
    }
}
