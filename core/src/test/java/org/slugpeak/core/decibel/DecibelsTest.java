package org.slugpeak.core.decibel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecibelsTest {

    /** Ten times the voltage is 20 dB and ten times the power 10 dB by definition; twice is 20 log10 2, by hand from log10 2 = 0.30103. */
    @ParameterizedTest
    @CsvSource({"1, 0", "10, 20", "0.1, -20", "1000, 60", "2, 6.0206", "0.5, -6.0206", "0, -Infinity", "-0.0, -Infinity"
    })
    void anAmplitudeHasTwentyDecibelsADecade(double ratio, double levelDb) {
        assertEquals(levelDb, Decibels.of(ratio), 1e-5);
        assertEquals(levelDb / 2, Decibels.ofPower(ratio), 1e-5);
    }

    @ParameterizedTest
    @CsvSource({"Infinity, Infinity", "NaN, NaN", "-1, NaN", "-Infinity, NaN"})
    void whatIsNoRatioHasNoLevel(double ratio, double levelDb) {
        assertEquals(levelDb, Decibels.of(ratio));
        assertEquals(levelDb, Decibels.ofPower(ratio));
    }

    @ParameterizedTest
    @CsvSource({"-Infinity, 0", "Infinity, Infinity", "NaN, NaN"})
    void theWayBackKnowsTheSameEdges(double levelDb, double ratio) {
        assertEquals(ratio, Decibels.ratio(levelDb));
    }

    @Property
    void backAndForthIsWhereItBegan(@ForAll @DoubleRange(min = -300, max = 300) double levelDb) {
        assertEquals(levelDb, Decibels.of(Decibels.ratio(levelDb)), 1e-12 * Math.max(1, Math.abs(levelDb)));
    }

    @Property
    void ratiosThatMultiplyAddTheirDecibels(
            @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double one,
            @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double other) {
        assertEquals(Decibels.of(one) + Decibels.of(other), Decibels.of(one * other), 1e-10);
    }

    @Property
    void aSquaredAmplitudeIsAPower(@ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double ratio) {
        assertEquals(Decibels.of(ratio), Decibels.ofPower(ratio * ratio), 1e-10);
    }

    @Property
    void whatIsLostAndWhatIsLeftMakeTheWhole(@ForAll @DoubleRange(max = 300) double dropDb) {
        double lost = Decibels.lost(dropDb);
        assertTrue(lost >= 0 && lost <= 1);
        assertEquals(1, lost + Decibels.ratio(-dropDb), 1e-15);
    }

    @Property
    void twoAmplitudesAreAsFarApartEitherWayAndWhateverTheirSigns(
            @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double one,
            @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double other) {
        double apartDb = Decibels.apart(one, other);
        assertEquals(Math.abs(Decibels.of(one / other)), apartDb);
        assertEquals(apartDb, Decibels.apart(other, one), 1e-9);
        assertEquals(apartDb, Decibels.apart(-one, other));
    }

    @Property
    void apartIsFiniteForAnything(@ForAll double one, @ForAll double other) {
        double apartDb = Decibels.apart(one, other);
        assertTrue(apartDb >= 0 && apartDb <= 400, () -> "apart " + apartDb);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "1, 0, 400", "0, 1, 400", "NaN, 1, 0", "Infinity, 1, 400", "Infinity, Infinity, 0"})
    void apartIsFiniteAtTheEdges(double one, double other, double apartDb) {
        assertEquals(apartDb, Decibels.apart(one, other));
    }
}
