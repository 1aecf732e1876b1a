package org.slugpeak.core.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.session.CurveWork;

class MeasuredLawTest {

    private final MeasuredLaw law = new MeasuredLaw();

    /** Five steps of 3 dB at a detector whose reading goes with a power of the signal. */
    private void measure(double volts, double exponent) {
        for (int i = 0; i <= 5; i++) {
            law.take(new CurveWork.LawStep(i, -3.0 * i, volts * Math.pow(10, -3.0 * i * exponent / 20)));
        }
    }

    @Test
    void withoutStepsALevelStaysAsItWasRead() {
        assertTrue(law.law().isEmpty());
        assertEquals(0.3, law.straight(0.3));
    }

    @Test
    void halfTheSignalOfASquareDetectorIsAQuarterOfItsReading() {
        measure(1, 2);
        assertEquals(0.5, law.straight(0.25), 0.005);
    }

    @Test
    void theLawThatWasMeasuredLastCounts() {
        measure(1, 1);
        measure(2, 2);
        assertEquals(1, law.straight(0.5), 0.01);
    }
}
