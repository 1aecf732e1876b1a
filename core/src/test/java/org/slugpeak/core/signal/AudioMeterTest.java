package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.slugpeak.core.signal.Heard.dB;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.signal.Heard.Level;
import org.slugpeak.core.word.Refused;

/** The meter as a whole: what is read, how often, how fast, and with how much noise. */
class AudioMeterTest {

    private static final double RATE_HZ = 48_000;
    private static final MeterSettings USUAL = MeterSettings.defaults();

    @ParameterizedTest
    @EnumSource(LevelKind.class)
    void aSineHasTheSameLevelHoweverItIsRead(LevelKind kind) {
        Heard heard = Heard.of(
                RATE_HZ,
                USUAL.withKind(kind),
                Signal.at(RATE_HZ).sine(610, 0.3, 0).seconds(1));
        assertEquals(0, dB(heard.last().fs() / 0.3), kind == LevelKind.TONE ? 0.001 : 0.05);
    }

    @Test
    void rmsTakesEverythingButDc() {
        Heard heard = Heard.of(
                RATE_HZ,
                USUAL.withKind(LevelKind.RMS),
                Signal.at(RATE_HZ)
                        .offset(0.2)
                        .sine(50, 0.3, 0)
                        .sine(9000, 0.4, 0)
                        .seconds(0.5));
        assertEquals(0.5, heard.last().fs(), 1e-6);
        assertEquals(Condition.OK, heard.last().condition());
    }

    @Test
    void theBandTakesItsShareOfNoiseAndNoneOfHum() {
        double sigma = 0.05;
        Heard heard = Heard.of(
                RATE_HZ,
                USUAL.withKind(LevelKind.BAND).withResponse(Duration.ofSeconds(1)),
                Signal.at(RATE_HZ)
                        .noise(sigma, 6)
                        .sine(50, 0.2, 0)
                        .sine(5000, 0.2, 0)
                        .seconds(10));
        double power = heard.after(1.5).stream()
                .mapToDouble(l -> l.fs() * l.fs() / 2)
                .average()
                .orElseThrow();
        double share = (1100.0 - 300) / (RATE_HZ / 2);
        assertEquals(sigma * sigma * share, power, 0.03 * sigma * sigma * share);
        assertEquals(800, heard.meter().noiseBandwidthHz(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 100, 300, 1000})
    void responseAndNoiseAreTheStatedTrade(int responseMillis) {
        double sigma = 0.02;
        Heard heard = Heard.of(
                12_000,
                USUAL.withResponse(Duration.ofMillis(responseMillis)).withInterval(Duration.ofMillis(responseMillis)),
                Signal.at(12_000).sine(433, 0.1, 0).noise(sigma, 12).seconds(400 * responseMillis / 1000.0));
        double[] levels = heard.after(1.5 * responseMillis / 1000.0).stream()
                .mapToDouble(Level::fs)
                .toArray();
        assertEquals(399, levels.length);
        double spread = new StandardDeviation().evaluate(levels);
        // Noise of density sigma^2 / (rate / 2) through the stated bandwidth; an amplitude takes the half of it in
        // phase
        // with the tone, twice.
        double expected = Math.sqrt(2 * sigma * sigma * heard.meter().noiseBandwidthHz() / 12_000);
        assertEquals(1, spread / expected, 0.12);
        assertEquals(responseMillis / 2000.0, heard.meter().latencySeconds(), 1e-6);
    }

    @Test
    void levelsComeAtTheirIntervalWithoutDrift() {
        double rateHz = 44_100;
        Heard heard = Heard.of(
                rateHz,
                USUAL.withInterval(Duration.ofNanos(33_333_333)),
                Signal.at(rateHz).sine(400, 0.1, 0).seconds(10));
        List<Level> levels = heard.levels();
        for (int i = 0; i < levels.size(); i++) {
            assertEquals(0.1 + i * 0.033333333, levels.get(i).seconds(), 1.1 / rateHz);
        }
        assertEquals(298, levels.size());
    }

    @Test
    void theSizeOfTheBlocksDoesNotMatter() {
        double[] samples = Signal.at(RATE_HZ)
                .sine(412, 0.1, 0)
                .hum(50, 0.1, 1)
                .noise(0.01, 2)
                .seconds(1.5);
        List<Level> whole = Heard.of(RATE_HZ, samples).levels();
        for (int block : new int[] {1, 7, 480, 961}) {
            List<Level> pieces = new ArrayList<>();
            AudioMeter meter = new AudioMeter(
                    RATE_HZ,
                    USUAL,
                    (frame, level, condition) -> pieces.add(new Level(frame / RATE_HZ, level, condition)));
            for (int i = 0; i < samples.length; i += block) {
                meter.take(samples, i, Math.min(samples.length, i + block));
            }
            assertEquals(whole, pieces);
            assertEquals(samples.length, meter.frames());
        }
    }

    @Test
    void twiceTheVoltageIsTwiceTheReading() {
        double[] once = Signal.at(RATE_HZ)
                .sine(412, 0.1, 0)
                .hum(60, 0.03, 1)
                .noise(0.003, 2)
                .seconds(1.5);
        double[] twice = new double[once.length];
        for (int i = 0; i < once.length; i++) {
            twice[i] = 2 * once[i];
        }
        List<Level> single = Heard.of(RATE_HZ, once).levels();
        List<Level> twofold = Heard.of(RATE_HZ, twice).levels();
        assertEquals(single.size(), twofold.size());
        for (int i = 0; i < single.size(); i++) {
            assertEquals(2 * single.get(i).fs(), twofold.get(i).fs(), 1e-12);
            assertEquals(single.get(i).condition(), twofold.get(i).condition());
        }
    }

    @Test
    void settingsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> USUAL.withResponse(Duration.ofMillis(39)));
        assertThrows(IllegalArgumentException.class, () -> USUAL.withResponse(Duration.ofMillis(1001)));
        assertThrows(IllegalArgumentException.class, () -> USUAL.withInterval(Duration.ZERO));
        assertThrows(Refused.class, () -> MeterSettings.of(USUAL.kind(), USUAL.response(), Duration.ZERO));
        assertThrows(Refused.class, () -> MeterSettings.of(USUAL.kind(), Duration.ofMillis(39), USUAL.interval()));
        assertEquals(
                "the interval must be 1 ms to 1 s, not 0 ms",
                assertThrows(IllegalArgumentException.class, () -> USUAL.withInterval(Duration.ZERO))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> new AudioMeter(3999, USUAL, (f, l, c) -> {}));
        assertThrows(IllegalArgumentException.class, () -> new AudioMeter(Double.NaN, USUAL, (f, l, c) -> {}));
    }
}
