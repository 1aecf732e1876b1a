package org.slugpeak.core.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class UncertaintyTest {

    @Test
    void partsAddAsSquares() {
        assertEquals(0.13, new Uncertainty(0.03, 0.04, 0.12, 0).sigmaDb(), 1e-12);
        Uncertainty both = new Uncertainty(0.3, 0, 0, 0).with(new Uncertainty(0.4, 0.1, 0, 0));
        assertEquals(new Uncertainty(0.5, 0.1, 0, 0), both);
    }

    @Test
    void theGreatestPartIsTheLimit() {
        assertEquals(Limit.LAST_DIGIT, new Uncertainty(0.2, 0.1, 0.1, 0.1).limit());
        assertEquals(Limit.NOISE, new Uncertainty(0.1, 0.2, 0.1, 0.1).limit());
        assertEquals(Limit.INTERPOLATION, new Uncertainty(0.1, 0.1, 0.2, 0.1).limit());
        assertEquals(Limit.ATTENUATOR, new Uncertainty(0.1, 0.1, 0.1, 0.2).limit());
    }

    /** JCGM 100:2008, 4.3.7: a rectangle of half-width a has the standard deviation a over the root of 3. */
    @Test
    void anAttenuatorThatMayBeOffByADecibelAddsItsRectangle() {
        assertEquals(1 / Math.sqrt(3), Uncertainty.NONE.setWithin(1).sigmaDb(), 1e-12);
    }

    /** JCGM 100:2008, F.2.2.1, and 8.686 dB for a neper. */
    @Test
    void aLastDigitOfAHundredthOfTheReadingIsAFortiethOfADecibel() {
        Uncertainty read = new OutputReading(0.4, 0, 0.004).uncertainty();
        assertEquals(8.685889638 * 0.01 / Math.sqrt(12), read.digitDb(), 1e-9);
        assertEquals(0, read.noiseDb());
    }

    @Test
    void noiseOfAHundredthIsTwelfthOfADecibel() {
        assertEquals(
                0.08685889638, new OutputReading(0.4, 0.004, 0).uncertainty().sigmaDb(), 1e-9);
    }

    @Test
    void signalWithNoiseOverNoiseIsTheRatioOfTheReadings() {
        OutputReading with = new OutputReading(0.4, 0, 0);
        assertEquals(20, ReceiverFigures.signalToNoiseDb(with, new OutputReading(0.04, 0, 0)), 1e-9);
    }
}
