package org.slugpeak.core.steps;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.word.Refused;

/** Examples worked by hand. Each value lies one step from the one before it, on whichever side. */
final class StepFinderTest {

    @ParameterizedTest(name = "{1}: {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 2 1             | peak | 3 passed 2.0 at 2, back 1.00",
                "5 7 6             | peak | 3 passed 7.0 at 2, back 0.83",
                "0.80 0.88 0.86    | peak | 3 passed 0.88 at 2, back 0.70",
                "5 7 7 5           | peak | 4 passed 7.0 at 2, back 1.50",
                "5 7 7 7 5         | peak | 5 passed 7.0 at 2, back 2.00",
                "5 7 7 6           | peak | 4 passed 7.0 at 2, back 1.28",
                "3 2 1             | peak | 2 wrong-way",
                "3 2 3 4 3         | peak | 2 wrong-way; 5 passed 4.0 at 4, back 1.00",
                "3 2 1 2 1         | peak | 2 wrong-way; 5 wrong-way",
                "3 2 3 2           | peak | 2 wrong-way; 4 passed 3.0 at 1, back 1.00",
                "1 2 1 0           | peak | 3 passed 2.0 at 2, back 1.00; 4 further, back 2.00",
                "1 2 1 1 0.5       | peak | 3 passed 2.0 at 2, back 1.00; 5 further, back 3.00",
                "1 2 1 2           | peak | 3 passed 2.0 at 2, back 1.00; 4 returned to 2.0",
                "1 2 1 2 2 2       | peak | 3 passed 2.0 at 2, back 1.00; 4 returned to 2.0",
                "5 7 6 8 9         | peak | 3 passed 7.0 at 2, back 0.83; 4 returned to 8.0; 5 reversed",
                "1 3 9 3 9 3       | peak | 4 passed 9.0 at 3, back 1.00; 5 returned to 9.0; 6 passed 9.0 at 3, back 1.00",
                "1 3 9 3 1 2 1     | peak | 4 passed 9.0 at 3, back 1.00; 5 further, back 2.00; 7 wrong-way",
                "1 5 4 9           | peak | 3 passed 5.0 at 2, back 0.70; 4 reversed",
                "-1 -2 -1          | peak | 1 negative-going; 3 passed -2.0 at 2, back 1.00",
                "0 0 0 0           | peak | ''",
                "4 4 4 4           | peak | ''",
                "0 1 0             | peak | 3 passed 1.0 at 2, back 1.00",
                "3 1 3             | dip  | 3 passed 1.0 at 2, back 1.00",
                "3 0 2             | dip  | 3 passed 0.0 at 2, back 0.90",
                "3 1 3 1           | dip  | 3 passed 1.0 at 2, back 1.00; 4 returned to 1.0",
                "1 2 3             | dip  | 2 wrong-way",
                "-3 -1 -3          | dip  | 1 negative-going; 3 passed -1.0 at 2, back 1.00",
                "3 1 -1            | zero | 3 passed 0.0 at 2, back 0.50",
                "6 3 -1            | zero | 3 passed 0.0 at 3, back 0.25",
                "-6 -3 1           | zero | 3 passed 0.0 at 3, back 0.25",
                "3 0 -1            | zero | 3 passed 0.0 at 2, back 0.50",
                "3 0 0 -3          | zero | 4 passed 0.0 at 3, back 1.50",
                "3 0 3             | zero | 3 dead-zero",
                "3 1 -1 -2 0       | zero | 3 passed 0.0 at 2, back 0.50; 4 further, back 1.50; 5 returned to 0.0",
                "3 1 -2 1 -1 0 -1  | zero | 3 passed 0.0 at 2, back 0.67; 4 passed 0.0 at 4, back 0.33;"
                        + " 5 passed 0.0 at 4, back 0.50; 6 returned to 0.0",
                "1 2 3             | zero | 2 wrong-way",
            })
    void saysAtEachStepWhatTheValuesShow(String values, String seek, String expected) throws Refused {
        double[] typed = Arrays.stream(values.strip().split(" +"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertEquals(expected, String.join("; ", Told.of(Seek.ofCode(seek), typed).words));
    }

    @Test
    void theBestIsThereFromTheFirstValueAndTheTrendFromTheSecond() {
        Told told = Told.of(Seek.PEAK, 0.5);
        assertAll(
                () -> assertEquals(0.5, told.finder.best()),
                () -> assertEquals(Trend.STEADY, told.finder.trend()),
                () -> assertEquals(1, told.finder.ofBest()));
        told.type(0.6);
        assertEquals(Trend.RISING, told.finder.trend());
        told.type(0.45);
        assertAll(
                () -> assertEquals(Trend.FALLING, told.finder.trend()),
                () -> assertEquals(0.6, told.finder.best()),
                () -> assertEquals(0.75, told.finder.ofBest(), 1e-15));
    }

    /** p = 0.07, q = 0.01: 1 - 0.06 / 0.16 = 0.625 steps back, 0.87 + 0.0036 / 0.64 = 0.875625 high. */
    @Test
    void theTopLiesWhereTheParabolaHasIt() {
        StepsBack back = Told.of(Seek.PEAK, 0.80, 0.87, 0.86).back();
        assertAll(() -> assertEquals(0.625, back.steps(), 1e-12), () -> assertEquals(0.875625, back.top(), 1e-12));
    }

    /** The corner p = 0.07, q = 0.02 has its vertex 0.05 / 0.18 steps from the middle, not 0.375. */
    @Test
    void aCoarseLastDigitWidensTheErrorAndAFineOneLeavesTheCircuitsOwn() {
        StepsBack coarse = Told.of(Seek.PEAK, 0.80, 0.87, 0.86).back();
        StepsBack fine = Told.of(Seek.PEAK, 0.8001, 0.87, 0.86).back();
        assertTrue(coarse.stepsError() > 0.375 - 0.05 / 0.18 - 1e-9, "corner at q + r: " + coarse);
        assertTrue(coarse.stepsError() <= 0.5, coarse.toString());
        assertTrue(fine.stepsError() < 0.02, fine.toString());
        assertTrue(fine.topError() < coarse.topError(), coarse + " " + fine);
    }

    /** Sizes 1 and 3 on either side: 3 / (1 + 3) back, error 0.5 / 4. */
    @Test
    void aZeroIsFoundOnTheStraightLineBetweenTheSigns() {
        StepsBack back = Told.of(Seek.ZERO, 2, 1, -3).back();
        assertAll(() -> assertEquals(0.75, back.steps(), 1e-15), () -> assertEquals(0.125, back.stepsError(), 1e-15));
    }

    @Test
    void aStepThatIsTooCoarseForTheHeightSaysSo() {
        assertTrue(Double.isFinite(Told.of(Seek.PEAK, 900, 1000, 999).back().topError()));
        assertTrue(Double.isNaN(Told.of(Seek.PEAK, 1, 1000, 999).back().topError()));
    }

    @Test
    void nothingIsConcludedAcrossAStepWithoutAValue() {
        Told told = Told.of(Seek.PEAK, 1, 2);
        told.finder.acceptNone(3);
        told.type(1, 0.5);
        assertEquals(List.of(), told.words);
        assertEquals(2, told.finder.best());
    }

    @Test
    void aMistakeTakenBackLeavesNoTrace() {
        Told told = Told.of(Seek.PEAK, 1, 2, 8);
        assertTrue(told.finder.undo());
        assertEquals(2, told.finder.best());
        told.type(3, 2);
        assertEquals(List.of("5 passed 3.0 at 4, back 1.00"), told.words);
    }

    @Test
    void aPassThatWasAMistakeIsForgottenAndNotToldAgain() {
        Told told = Told.of(Seek.PEAK, 1, 2, 3, 0.4);
        assertTrue(told.finder.undo());
        told.type(4);
        assertEquals(List.of("4 passed 3.0 at 3, back 1.22"), told.words);
        assertTrue(told.finder.undo());
        told.type(2);
        assertEquals(2, told.words.size(), "the pass that is true is told: " + told.words);
    }

    @Test
    void thereIsNothingToTakeBackBeforeTheFirstValueAndAfterABeginning() {
        Told told = new Told(Seek.PEAK);
        assertFalse(told.finder.undo());
        told.type(1, 2);
        told.finder.restart();
        assertFalse(told.finder.undo());
        assertTrue(Double.isNaN(told.finder.best()));
    }
}
