package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sources: arithmetic of Terman 1943, section 9; band edges of the Radio Regulations and 47 CFR 73.14. */
class SuperhetTest {

    @ParameterizedTest(name = "at an IF of {0} kHz the image of {1} kHz is at {2} kHz")
    @CsvSource({
        "455, 600, 1510", "455, 1000, 1910", "455, 1400, 2310",
        "175, 600, 950", "175, 1000, 1350", "175, 1400, 1750",
        "262, 600, 1124", "262, 1000, 1524", "262, 1400, 1924",
        "465, 600, 1530", "465, 1000, 1930", "465, 1400, 2330",
        "10700, 98000, 119400"
    })
    void imageIsTwiceTheIntermediateFrequencyAboveTheSignal(double ifKhz, double signalKhz, double imageKhz) {
        assertEquals(imageKhz * 1e3, Superhet.oscillatorAbove(ifKhz * 1e3).imageHz(signalKhz * 1e3), 1e-6);
    }

    @Test
    void oscillatorRunsAboveOrBelowTheSignal() {
        assertEquals(1877e3, Superhet.oscillatorAbove(455e3).oscillatorHz(1422e3));
        assertEquals(15.545e6, new Superhet(455e3, OscillatorSide.BELOW).oscillatorHz(16e6));
        assertEquals(15.09e6, new Superhet(455e3, OscillatorSide.BELOW).imageHz(16e6));
    }

    @Test
    void signalIsHeardAgainTwiceTheIntermediateFrequencyLowerOnTheDial() {
        assertEquals(15.09e6, Superhet.oscillatorAbove(455e3).imageDialHz(16e6));
    }

    @ParameterizedTest(name = "harmonics of {0} kHz between 530 and 1700 kHz: {1}")
    @CsvSource({
        "455, 910 1365",
        "456, 912 1368",
        "460, 920 1380",
        "465, 930 1395",
        "470, 940 1410",
        "450, 900 1350",
        "262, 786 1048 1310 1572",
        "175, 700 875 1050 1225 1400 1575"
    })
    void harmonicsOfTheIntermediateFrequencyWhistle(double ifKhz, String expectedKhz) {
        List<Double> expected = java.util.Arrays.stream(expectedKhz.split(" "))
                .map(each -> Double.parseDouble(each) * 1e3)
                .toList();
        assertEquals(expected, Superhet.oscillatorAbove(ifKhz * 1e3).intermediateHarmonicsWithin(530e3, 1700e3));
    }

    @Test
    void everyListedResponseMixesToTheIntermediateFrequency() {
        SplittableRandom random = new SplittableRandom(455);
        for (int round = 0; round < 200; round++) {
            double intermediate = random.nextDouble(100e3, 11e6);
            OscillatorSide side = random.nextBoolean() ? OscillatorSide.ABOVE : OscillatorSide.BELOW;
            Superhet receiver = new Superhet(intermediate, side);
            double tuned = random.nextDouble(150e3, 108e6);
            double oscillator = receiver.oscillatorHz(tuned);
            for (MixingResponse each : receiver.responses(tuned)) {
                double m = each.oscillatorHarmonic() * oscillator;
                double n = each.signalHarmonic() * each.signalHz();
                double miss = Math.min(Math.abs(Math.abs(m - n) - intermediate), Math.abs(m + n - intermediate));
                assertEquals(0, miss, 1e-6 * intermediate + 1e-9 * n, each::toString);
            }
        }
    }

    @Test
    void signalImageAndBreakThroughAreAmongTheResponses() {
        List<MixingResponse> responses = Superhet.oscillatorAbove(455e3).responses(1000e3);
        assertTrue(responses.contains(new MixingResponse(1, 1, 1000e3)));
        assertTrue(responses.contains(new MixingResponse(1, 1, 1910e3)));
        assertTrue(responses.contains(new MixingResponse(0, 1, 455e3)));
        assertEquals(1, responses.get(0).order(), "break-through at the IF is of the lowest order");
    }

    @Test
    void secondHarmonicOfAGeneratorAt700IsHeardAt1400() {
        List<GeneratorResponse> found = Superhet.oscillatorAbove(455e3).generatorResponses(700e3, 1400e3, 5e3);
        assertEquals(List.of(new GeneratorResponse(2, GeneratorResponse.Path.SIGNAL, 0)), found);
    }

    @Test
    void generatorAt755IsHeardAt600AsAnImageByItsSecondHarmonic() {
        List<GeneratorResponse> found = Superhet.oscillatorAbove(455e3).generatorResponses(755e3, 600e3, 5e3);
        assertEquals(List.of(new GeneratorResponse(2, GeneratorResponse.Path.IMAGE, 0)), found);
    }

    @Test
    void generatorAtItsMarkIsWantedAndNothingElse() {
        List<GeneratorResponse> found = Superhet.oscillatorAbove(455e3).generatorResponses(1000e3, 1000e3, 5e3);
        assertEquals(1, found.size());
        assertTrue(found.get(0).isWanted());
    }

    @Test
    void refusesAnIntermediateFrequencyThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> Superhet.oscillatorAbove(0));
        assertThrows(IllegalArgumentException.class, () -> Superhet.oscillatorAbove(Double.NaN));
    }
}
