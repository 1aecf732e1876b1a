package org.slugpeak.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.Uncertainty;

/** The laws of sets are made up here as formulas whose inverse is known. */
class InputSearchTest {

    private static final double LOW_DB = -140;
    private static final double HIGH_DB = -20;

    private int settings;

    private FoundInput find(DoubleUnaryOperator set, double targetDb, double startDb) {
        InputSearch search = new InputSearch(targetDb, startDb, LOW_DB, HIGH_DB);
        settings = 0;
        for (OptionalDouble next = search.nextDb(); next.isPresent(); next = search.nextDb()) {
            double inputDb = next.getAsDouble();
            assertTrue(inputDb >= LOW_DB && inputDb <= HIGH_DB, inputDb + " dB is out of reach");
            search.take(new TransferPoint(inputDb, set.applyAsDouble(inputDb), Uncertainty.NONE));
            settings++;
        }
        return search.found().orElseThrow();
    }

    /** Square law of slope 2 to a straight one of slope 1, about a bend. */
    private static double bent(double inputDb, double bendDb) {
        double square = Math.pow(10, (inputDb - bendDb) / 10);
        return bendDb + 60 + 10 * Math.log10(square * square / (1 + square));
    }

    @Test
    void findsTheInputOfAStraightSetExactlyInThreeSettings() {
        FoundInput found = find(inputDb -> inputDb + 80, -8, -90.5);
        assertEquals(-88, found.inputDb(), 1e-9);
        assertEquals(1, found.slope(), 1e-9);
        assertTrue(settings <= 3, settings + " settings");
    }

    @Test
    void findsTheInputOfAnySetThatBendsWithinWhatItSays() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 500; i++) {
            double bendDb = random.nextDouble(-110, -60);
            double trueDb = bendDb + random.nextDouble(-15, 25);
            double targetDb = bent(trueDb, bendDb);
            FoundInput found = find(inputDb -> bent(inputDb, bendDb), targetDb, random.nextDouble(-120, -40));
            assertEquals(Figure.Outcome.MEASURED, found.outcome());
            double off = Math.abs(found.inputDb() - trueDb);
            assertTrue(off < 0.15 && off <= 4 * found.uncertainty().sigmaDb() + 1e-6, off + " dB off");
            assertTrue(settings <= 9, settings + " settings");
        }
    }

    @Test
    void findsTheInputWhereGainControlLeavesATenth() {
        FoundInput found = find(inputDb -> inputDb / 10, -6, -100);
        assertEquals(-60, found.inputDb(), 0.05);
    }

    @Test
    void comesDownFromWhatIsTooMuch() {
        FoundInput found = find(inputDb -> inputDb > -70 ? Double.POSITIVE_INFINITY : inputDb + 80, -8, -30);
        assertEquals(-88, found.inputDb(), 1e-9);
    }

    @Test
    void saysAtLeastWhereTheGeneratorGivesNoMore() {
        FoundInput found = find(inputDb -> inputDb + 5, -8, -60);
        assertEquals(Figure.Outcome.AT_LEAST, found.outcome());
        assertEquals(HIGH_DB, found.inputDb());
    }

    @Test
    void saysAtMostWhereItGivesNoLess() {
        FoundInput found = find(inputDb -> inputDb + 200, -8, -60);
        assertEquals(Figure.Outcome.AT_MOST, found.outcome());
        assertEquals(LOW_DB, found.inputDb());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.2})
    void dividesWhatTheOutputIsUncertainByByTheSlope(double sigmaDb) {
        InputSearch search = new InputSearch(-8, -44, LOW_DB, HIGH_DB);
        Uncertainty noise = new Uncertainty(0, sigmaDb, 0, 0);
        for (OptionalDouble next = search.nextDb(); next.isPresent(); next = search.nextDb()) {
            search.take(new TransferPoint(next.getAsDouble(), 2 * next.getAsDouble() + 80, noise));
        }
        assertEquals(sigmaDb / 2, search.found().orElseThrow().uncertainty().noiseDb(), 1e-12);
    }
}
