package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.signal.Heard.dB;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.signal.Heard.Level;

/** When there is a tone, when there is none, and when nobody could tell. */
class ToneFindingTest {

    private static final double RATE_HZ = 12_000;

    private static long tones(Heard heard, double after) {
        return heard.after(after).stream().filter(l -> l.condition().hasValue()).count();
    }

    @Test
    void fiveMinutesOfHissAreNoTone() {
        Heard heard = new Heard(RATE_HZ, MeterSettings.defaults());
        for (int minute = 0; minute < 5; minute++) {
            heard.hear(Signal.at(RATE_HZ).noise(0.1, minute).seconds(60));
        }
        assertEquals(14_996, heard.levels().size(), 2);
        assertEquals(0, tones(heard, 0));
        assertFalse(heard.quality().hasTone());
    }

    @Test
    void silenceIsNoTone() {
        Heard heard = Heard.of(RATE_HZ, new double[24_000]);
        assertEquals(0, tones(heard, 0));
        assertEquals(0, tones(Heard.of(RATE_HZ, Signal.at(RATE_HZ).offset(0.3).seconds(2)), 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 50.05, 60, 59.95})
    void humIsNoTone(double mainsHz) {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 20; i++) {
            Heard heard = Heard.of(
                    RATE_HZ,
                    Signal.at(RATE_HZ)
                            .hum(mainsHz, 0.3, random.nextLong())
                            .noise(1e-4, i)
                            .seconds(3));
            assertEquals(0, tones(heard, 0));
            assertEquals(mainsHz, heard.quality().mainsHz(), 0.01);
        }
    }

    @Test
    void theBuzzOfAFullWaveRectifierIsNoTone() {
        Signal buzz = Signal.at(RATE_HZ).noise(1e-5, 1);
        for (int k = 1; k <= 10; k++) {
            buzz.sine(100 * k, 0.2 / k / k, k);
        }
        assertEquals(0, tones(Heard.of(RATE_HZ, buzz.seconds(3)), 0));
    }

    @Test
    void aToneTenDecibelsBelowTheHissOfTheAudioBandIsStillRead() {
        double sigma = 0.1;
        double amplitude = sigma * Math.sqrt(2) * Math.pow(10, -10 / 20.0);
        Heard heard = Heard.of(
                48_000,
                Signal.at(48_000).sine(433, amplitude, 0).noise(sigma, 5).seconds(10));
        assertEquals(491.0, (double) tones(heard, 0.15), 25.0);
        double mean = heard.after(0.15).stream()
                .filter(l -> l.condition().hasValue())
                .mapToDouble(Level::fs)
                .average()
                .orElseThrow();
        assertEquals(0, dB(mean / amplitude), 0.3);
    }

    @Test
    void aToneComesAndGoesWithinTheResponse() {
        Heard heard = Heard.of(
                RATE_HZ,
                Signal.at(RATE_HZ)
                        .with(i -> i / RATE_HZ >= 1 && i / RATE_HZ < 2 ? 0.1 * Math.sin(i * 0.21) : 0)
                        .noise(1e-3, 9)
                        .seconds(3));
        for (Level level : heard.levels()) {
            if (level.seconds() <= 1 || level.seconds() > 2.12) {
                assertEquals(Condition.NO_VALUE, level.condition(), () -> "at " + level.seconds());
            } else if (level.seconds() >= 1.12 && level.seconds() <= 2) {
                assertEquals(Condition.OK, level.condition(), () -> "at " + level.seconds());
            }
        }
    }

    @Test
    void aGeneratorThatDriftsIsFollowed() {
        double startHz = 440;
        double endHz = 360;
        double seconds = 20;
        double sweep = (endHz - startHz) / seconds;
        Heard heard = Heard.of(
                RATE_HZ,
                Signal.at(RATE_HZ)
                        .with(i -> {
                            double t = i / RATE_HZ;
                            return 0.1 * Math.cos(2 * Math.PI * (startHz * t + sweep * t * t / 2));
                        })
                        .seconds(seconds));
        assertEquals(0, heard.after(0.13).size() - tones(heard, 0.13));
        for (Level level : heard.after(0.13)) {
            assertEquals(0, dB(level.fs() / 0.1), 0.02);
        }
        // The frequency, like the level, is that of half the response ago.
        assertEquals(
                endHz - sweep * heard.meter().latencySeconds(), heard.quality().toneHz(), 0.1);
    }

    @Test
    void aGeneratorSetToAnotherToneIsFoundAgain() {
        Heard heard = Heard.of(
                RATE_HZ,
                Signal.at(RATE_HZ)
                        .with(i -> 0.1 * Math.cos(2 * Math.PI * (i / RATE_HZ < 1 ? 400.7 : 1000.3) * i / RATE_HZ))
                        .seconds(2));
        assertEquals(1000.3, heard.quality().toneHz(), 0.05);
        assertEquals(0, dB(heard.last().fs() / 0.1), 0.01);
    }

    @Test
    void aTonePlacedOnAHarmonicOfTheMainsIsReadAndItsDoubtIsStated() {
        double hum = 0.02;
        Signal withHum = Signal.at(RATE_HZ).hum(50, hum, 11).sine(400, 0.1, 1);
        Heard heard = Heard.of(RATE_HZ, withHum.seconds(4));
        AudioQuality quality = heard.quality();
        assertEquals(8, quality.toneOnHarmonic());
        assertEquals(Condition.OK, heard.last().condition());
        double error = Math.abs(dB(heard.last().fs() / 0.1));
        assertTrue(error <= quality.humErrorDb() + 0.01, () -> error + " dB, stated " + quality.humErrorDb());
        assertTrue(quality.humErrorDb() > 0.05 && quality.humErrorDb() < 0.5, () -> "" + quality.humErrorDb());
    }

    @Test
    void humHeardAloneBeforeTheToneIsWhatTheDoubtIsTakenFrom() {
        double eighth = 0.004;
        Heard heard = Heard.of(
                RATE_HZ,
                Signal.at(RATE_HZ)
                        .sine(50, 0.05, 0)
                        .sine(100, 0.03, 0)
                        .sine(400, eighth, 0)
                        .sine(300, 0.01, 0)
                        .with(i -> i / RATE_HZ < 3 ? 0 : 0.1 * Math.cos(2 * Math.PI * 400 / RATE_HZ * i))
                        .seconds(6));
        assertEquals(8, heard.quality().toneOnHarmonic());
        assertEquals(eighth, heard.quality().hiddenHumFs(), 1e-4);
        assertEquals(dB(1.04), dB(heard.last().fs() / 0.1), 0.01);
        assertEquals(dB(1 + eighth / 0.104), heard.quality().humErrorDb(), 0.01);
    }

    @Test
    void aToneThatHumHidesIsNotPassedOffAsATone() {
        Heard heard = Heard.of(
                RATE_HZ, Signal.at(RATE_HZ).hum(50, 1, 1).sine(400, 0.02, 0).seconds(3));
        assertEquals(0, tones(heard, 0));
    }

    @Test
    void withoutHumFourHundredHertzIsATonePlain() {
        Heard heard = Heard.of(RATE_HZ, Signal.at(RATE_HZ).sine(400, 0.1, 0).seconds(3));
        assertEquals(0, heard.quality().toneOnHarmonic());
        assertEquals(0, heard.quality().humErrorDb());
        assertTrue(Double.isNaN(heard.quality().mainsHz()));
    }
}
