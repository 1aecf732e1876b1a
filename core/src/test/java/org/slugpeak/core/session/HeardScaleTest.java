package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;

class HeardScaleTest {

    private final HeardScale heard = new HeardScale();

    /** Five steps of 3 dB at a detector whose reading goes with a power of the signal. */
    private void law(double volts, double exponent) {
        for (int i = 0; i <= 5; i++) {
            heard.take(new CurveWork.LawStep(i, -3.0 * i, volts * Math.pow(10, -3.0 * i * exponent / 20)));
        }
    }

    private void rest(double volts) {
        heard.take(new Caution.Checked(0, CheckKind.REST, CheckFigures.of(volts)));
    }

    private void at(MeterPoint point) {
        heard.take(new Said.Command(0, new Instruction.Level(LevelCommand.at(point))));
    }

    @Test
    void withoutRestAndStepsALevelStaysAsItWasRead() {
        assertFalse(heard.scale().isRestKnown());
        assertEquals(0.3, heard.scale().straight(0.3));
    }

    @Test
    void halfTheSignalOfASquareDetectorIsAQuarterOfItsReadingAboveRest() {
        rest(-0.2);
        law(1, 2);
        assertEquals(-0.5, heard.scale().straight(-0.45), 0.005);
        assertEquals(-0.45, heard.scale().read(heard.scale().straight(-0.45)), 1e-6);
    }

    @Test
    void theLawThatWasMeasuredLastCounts() {
        law(1, 1);
        law(2, 2);
        assertEquals(1, heard.scale().straight(0.5), 0.01);
    }

    @Test
    void whatIsKnownOfOnePointSaysNothingOfAnotherAndIsKnownStillWhenTheMeterComesBack() {
        at(MeterPoint.DETECTOR);
        rest(0.2);
        law(1, 2);
        at(MeterPoint.VOICE_COIL);
        assertEquals(0.45, heard.scale().straight(0.45));
        at(MeterPoint.DETECTOR);
        assertEquals(0.5, heard.scale().straight(0.45), 0.005);
    }

    /** A square detector spreads twice as much in its reading, as a share of it, as its signal does. */
    @Test
    void aSpreadIsToldAsItWouldBeRead() {
        assertEquals(0.01, heard.scale().readSpread(1, 0.01));
        law(1, 2);
        assertEquals(0.02, heard.scale().readSpread(1, 0.01), 1e-3);
    }
}
