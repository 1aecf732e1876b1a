package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hand needs 0.3 s to stop; what may be missing is 1. */
class HasteTest {

    private final Told told = new Told();
    private final Haste haste = new Haste(told);
    private long nowNanos;

    /** It came back, and was past the best again so much later. */
    private void overshoots(double afterSeconds) {
        haste.returned(nowNanos);
        nowNanos += Math.round(1e9 * afterSeconds);
        haste.passed(nowNanos);
    }

    private void comesBack(double missing) {
        haste.comesSoon(nowNanos, missing, 1);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.3", "1, 0.6", "2, 0.9", "3, 0.9"})
    void whoOvershootsSlowlyHearsOfItAReactionEarlierEachTimeButNotMoreThanTwo(int times, double leadSeconds) {
        for (int i = 0; i < times; i++) {
            overshoots(1);
        }
        assertEquals(leadSeconds, haste.leadSeconds(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1.49, 0.6", "1.5, 0.3"})
    void fromASecondAndAHalfOnItIsAnotherMovement(double afterSeconds, double leadSeconds) {
        overshoots(afterSeconds);
        assertEquals(leadSeconds, haste.leadSeconds(), 1e-12);
    }

    @Test
    void aPassWithoutAReturnIsNoOvershoot() {
        haste.passed(1);
        haste.returned(2);
        haste.passed(3);
        haste.passed(4);
        assertEquals(0.6, haste.leadSeconds(), 1e-12);
    }

    /** What is missing goes as the square of the speed. */
    @ParameterizedTest
    @CsvSource({"1.7, 1.3", "4, 2", "9, 3"})
    void whoHasOvershotAndHurriesHearsByHowMuchToComeSlower(double missing, double factor) {
        overshoots(1);
        comesBack(missing);
        assertEquals(List.of("turn-slower"), told.words());
        assertEquals(factor, told.first("turn-slower").value(), 0.01);
        assertEquals(nowNanos, told.first("turn-slower").tNanos());
    }

    @Test
    void aThirdFasterIsNotWorthAWord() {
        overshoots(1);
        comesBack(1.68);
        assertEquals(List.of(), told.words());
    }

    @Test
    void theWordComesOnceOnEachWayBack() {
        overshoots(1);
        comesBack(4);
        comesBack(9);
        comesBack(0.5);
        assertEquals(1, told.all.size());
        overshoots(1);
        comesBack(0.5);
        assertEquals(1, told.all.size(), "this time it comes slowly");
        comesBack(9);
        assertEquals(2, told.all.size());
    }

    @Test
    void nobodyIsToldBeforeTheFirstOvershoot() {
        comesBack(9);
        assertEquals(List.of(), told.words());
    }

    /** Whoever came too fast to stop does not need longer but slower. */
    @Test
    void whoHurriedHearsOfItNoEarlier() {
        comesBack(9);
        overshoots(1);
        assertEquals(0.3, haste.leadSeconds(), 1e-12);
        comesBack(1);
        overshoots(1);
        assertEquals(0.6, haste.leadSeconds(), 1e-12);
    }

    @Test
    void theNextAdjusterHasNotBeenOvershot() {
        overshoots(1);
        haste.returned(nowNanos);
        haste.restart();
        assertEquals(0.3, haste.leadSeconds(), 1e-12);
        haste.passed(nowNanos);
        comesBack(9);
        assertEquals(List.of(), told.words());
        assertEquals(0.3, haste.leadSeconds(), 1e-12);
    }
}
