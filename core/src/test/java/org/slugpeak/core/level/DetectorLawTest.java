package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.receiver.DiodeDetector;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.ThermionicDiode;

/** The law of the thermionic detector (held against shared/reference/detector elsewhere), found from five steps of 3 dB. */
class DetectorLawTest {

    private static List<DetectorLaw.Step> steps(DoubleUnaryOperator detector, double volts) {
        return IntStream.rangeClosed(0, 5)
                .mapToObj(i ->
                        new DetectorLaw.Step(-3 * i, detector.applyAsDouble(volts * Math.pow(10, -3 * i / 20.0))))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "1000, 3.2e-5, 0.1, 0",
        "1100, 3.2e-5, 0.22, 0",
        "1100, 3.2e-5, 0.22, 127000",
        "1150, 1.9e-3, 0.8, 127000"
    })
    void readingsBecomeTheDecibelsOfTheGenerator(double kelvin, double perveance, double rest, double source) {
        EnvelopeDetector detector = EnvelopeDetector.of(
                new DiodeDetector(ThermionicDiode.resting(kelvin, perveance, rest, 470e3), 470e3, source));
        for (double volts : new double[] {0.5, 1, 1.6, 3}) {
            DetectorLaw law = DetectorLaw.of(steps(detector::riseVolts, volts)).orElseThrow();
            for (double db = 0; db >= -15; db -= 0.5) {
                double level = detector.riseVolts(volts * Math.pow(10, db / 20));
                assertEquals(db, law.signalDb(level), 0.08, volts + " V, " + db + " dB");
            }
            double beyond = detector.riseVolts(volts * 0.1);
            assertEquals(-20, law.signalDb(beyond), 0.9, volts + " V");
            double straight = law.straight(detector.riseVolts(volts / 2)) / law.straight(detector.riseVolts(volts));
            assertEquals(0.5, straight, 0.003);
        }
    }

    /** Noise of 1 percent of each level, seeds 0 to 99: below the steps, on them, between and above. */
    @Test
    void aReadingIsFoundAgainFromWhatAStraightDetectorWouldShow() {
        for (int seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DetectorLaw law = DetectorLaw.of(
                            steps(volts -> volts * volts / (volts + 0.3) * (1 + 0.01 * random.nextGaussian()), 1))
                    .orElseThrow();
            for (double level = 0.002; level < 3; level *= 1.05) {
                assertEquals(level, law.level(law.straight(level)), 1e-6 * level, "seed " + seed);
            }
        }
    }

    @Test
    void whatIsNotPositiveStays() {
        DetectorLaw law = DetectorLaw.of(steps(volts -> volts, 1)).orElseThrow();
        assertEquals(0, law.level(0));
        assertTrue(Double.isNaN(law.level(Double.NaN)));
    }

    @Test
    void aStraightDetectorStaysAsItIs() {
        DetectorLaw law = DetectorLaw.of(steps(volts -> volts, 1)).orElseThrow();
        assertEquals(0.1, law.straight(0.1), 1e-3);
        assertEquals(1.5, law.straight(1.5), 1e-3);
        assertEquals(-0.1, law.straight(-0.1));
    }

    /** Noise of 1 percent of each level, seeds 0 to 99: the table stays monotone. */
    @Test
    void moreReadingIsAlwaysMoreSignal() {
        for (int seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DetectorLaw law = DetectorLaw.of(
                            steps(volts -> volts * volts / (volts + 0.3) * (1 + 0.01 * random.nextGaussian()), 1))
                    .orElseThrow();
            for (double level = 0.002; level < 2; level *= 1.02) {
                assertTrue(law.signalDb(level * 1.02) > law.signalDb(level), "seed " + seed + " at " + level);
            }
        }
    }

    @Test
    void stepsThatTheReadingDidNotFollowAreNoLaw() {
        assertEquals(Optional.empty(), DetectorLaw.of(steps(volts -> Math.min(volts, 0.6), 1)));
        assertEquals(Optional.empty(), DetectorLaw.of(steps(volts -> 0.0, 1)));
        assertEquals(Optional.empty(), DetectorLaw.of(List.of()));
    }
}
