package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** SINAD, distortion and hum against sums of known parts. */
class PurityTest {

    private static final double RATE_HZ = 48_000;

    /** 1 V at 400 Hz with 0.1 and 0.05 of second and third harmonic, scaled to fit. */
    private static Signal example(double scale) {
        return Signal.at(RATE_HZ)
                .sine(400, scale, 0.3)
                .sine(800, 0.1 * scale, 1)
                .sine(1200, 0.05 * scale, 2);
    }

    private static AudioQuality after(Signal signal, double seconds) {
        return Heard.of(RATE_HZ, signal.seconds(seconds)).quality();
    }

    @Test
    void distortionAndSinadOfTheWorkedExample() {
        // Algebra (shared/reference, E16): THD 11.18034 %, radio SINAD with hum 0.02 at 120 Hz and 0.01 V of noise
        // 18.8838 dB.
        AudioQuality quality = after(example(0.5).sine(120, 0.01, 0).noise(0.005, 3), 1);
        assertEquals(0.1118034, quality.distortion(), 0.0003);
        assertEquals(18.8838, quality.sinadDb(), 0.02);
    }

    @Test
    void withoutHumAndNoiseTheyAreExact() {
        // 19.08485 dB.
        AudioQuality quality = after(example(0.5), 1);
        assertEquals(0.1118034, quality.distortion(), 2e-5);
        assertEquals(19.08485, quality.sinadDb(), 0.001);
    }

    @Test
    void theRadioSinadOfTwelveDecibelsLeavesAQuarterOfTheTotalVoltage() {
        // Noise and distortion 25.12 % of the total, which the converter's definition calls 11.717 dB.
        double rest = 0.2512;
        double tone = Math.sqrt(1 - rest * rest);
        Signal signal = Signal.at(RATE_HZ).sine(700, 0.3 * tone, 0).sine(2345, 0.3 * rest, 0);
        assertEquals(12, after(signal, 1).sinadDb(), 0.005);
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 10, 12, 16})
    void quantisationIsHeardAsTheConverterRuleSays(int bits) {
        // 6.02 N + 1.76 dB for a full-scale sine (20 N lg 2 + 10 lg 1.5).
        double steps = Math.pow(2, bits - 1);
        double[] samples = Signal.at(RATE_HZ).sine(437.31, 0.999, 0).seconds(1);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Math.rint(samples[i] * steps) / steps;
        }
        double expected = 20 * bits * Math.log10(2) + 10 * Math.log10(1.5);
        assertEquals(expected, Heard.of(RATE_HZ, samples).quality().sinadDb(), 0.5);
    }

    @Test
    void theStatedLinesOfHumAreTheOnesMade() {
        Signal signal = Signal.at(RATE_HZ)
                .sine(433, 0.1, 0)
                .sine(60.02, 0.003, 1)
                .sine(120.04, 0.02, 2)
                .sine(240.08, 0.005, 3)
                .noise(1e-4, 8);
        AudioQuality quality = after(signal, 3);
        assertEquals(60.02, quality.mainsHz(), 0.002);
        assertEquals(3, quality.humLines().size());
        HumLine second = quality.humLines().get(1);
        assertEquals(2, second.harmonic());
        assertEquals(120.04, second.frequencyHz(), 0.004);
        assertEquals(0.02, second.levelFs(), 1e-4);
        assertEquals(0.0208, quality.humFs(), 1e-4);
    }

    @Test
    void aHissingToneIsNotCalledDistorted() {
        for (int seed = 0; seed < 20; seed++) {
            AudioQuality quality = after(Signal.at(RATE_HZ).sine(433, 0.02, 0).noise(0.02, seed), 0.5);
            assertTrue(quality.distortion() < 0.05, () -> "" + quality.distortion());
        }
    }

    @Test
    void nothingIsSaidOfAToneThatIsNotThere() {
        AudioQuality quality = after(Signal.at(RATE_HZ).noise(0.02, 1), 1);
        assertTrue(Double.isNaN(quality.sinadDb()));
        assertTrue(Double.isNaN(quality.distortion()));
        assertTrue(Double.isNaN(quality.toneHz()));
        assertEquals(0, quality.humLines().size());
    }
}
