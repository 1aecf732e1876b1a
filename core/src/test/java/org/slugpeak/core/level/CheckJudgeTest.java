package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.level.CheckJudge.Following;
import org.slugpeak.core.level.StepCheck.Level;

/** What the levels of a check come to, and from where on they are suspect. The limits are common practice, no source. */
class CheckJudgeTest {

    private static final long AT = 1;

    private final Told told = new Told();
    private final CheckJudge judge = new CheckJudge(told, new Standing(told));

    private double figure(CheckKind check) {
        return told.first(check.code()).amount();
    }

    private boolean suspected(Suspicion suspicion) {
        return told.heard("possible-" + suspicion.code());
    }

    /** Ohm's law: of a source and meter of R together 1 Mohm in series leaves R / (R + 1 Mohm). */
    @ParameterizedTest
    @CsvSource({"11e6, false", "5.2e6, false", "4.8e6, true", "0.2e6, true"})
    void aMeterOfLessThanFiveMegohmLoadsTheCircuit(double ohm, boolean loads) {
        judge.loading(AT, 2, 2 * ohm / (ohm + 1e6));
        assertEquals(ohm, figure(CheckKind.LOADING), ohm * 1e-6);
        assertEquals(loads, suspected(Suspicion.LOADING));
    }

    @Test
    void aMeterThatTheResistorDoesNotMoveIsOfNearlyAGigohm() {
        judge.loading(AT, 1, 1.2);
        assertEquals(999e6, figure(CheckKind.LOADING), 1);
        assertFalse(suspected(Suspicion.LOADING));
    }

    @ParameterizedTest
    @CsvSource({"1.03, false", "0.97, false", "1.02, true", "0.98, true"})
    void anAdjusterThatMovesTheReadingByLessThanAFifthOfADecibelDoesNothing(double ratio, boolean nothing) {
        judge.effect(AT, 0.5, 0.5 * ratio, Suspicion.PADDER);
        assertEquals(20 * Math.log10(ratio), figure(CheckKind.EFFECT), 1e-9);
        assertEquals(nothing, suspected(Suspicion.PADDER));
    }

    /** Powers of a response at -10, 0 and +10 kHz; the centre lies at 10 (upper - lower) / (upper + lower + centre). */
    @ParameterizedTest
    @CsvSource({
        "1, 0.1, 0.1, 0, false",
        "1, 0.2, 1, 4.7058824, false",
        "0.9, 0.2, 1, 5.1891892, true",
        "0.9, 1, 0.2, -5.1891892, true"
    })
    void aResponseThatIsCentredMoreThanFiveKilohertzAwayIsOfAnotherIf(
            double centre, double below, double above, double kilohertz, boolean other) {
        judge.otherIf(AT, centre, below, above);
        assertEquals(kilohertz, figure(CheckKind.OTHER_IF), 1e-6);
        assertEquals(other, suspected(Suspicion.WRONG_IF));
    }

    /** The fundamental is 1/n of what is heard, so that 2 kHz of it are n times 2 kHz; the mean of both sides counts. */
    @ParameterizedTest
    @CsvSource({"2, 3.8, false", "2, 4.2, true", "6, 0.5, true", "0, 0, false"})
    void whatFallsByMoreThanThreeDecibelsTwoKilohertzOffIsAHarmonic(double upDb, double downDb, boolean harmonic) {
        judge.harmonic(AT, 1, Math.pow(10, -upDb / 20), Math.pow(10, -downDb / 20));
        assertEquals((upDb + downDb) / 2, figure(CheckKind.HARMONIC), 1e-9);
        assertEquals(harmonic, suspected(Suspicion.HARMONIC));
    }

    @Test
    void anImageThatIsHeardIsToldByHowMuchItIsWeaker() {
        judge.image(AT, 1, 0.02);
        assertEquals(20 * Math.log10(50), figure(CheckKind.IMAGE), 1e-9);
        assertFalse(suspected(Suspicion.IMAGE));
    }

    @Test
    void whereNothingIsHeardTheSignalWasTheImage() {
        judge.image(AT, 1, 0.015);
        assertEquals(List.of("possible-image"), told.topics());
    }

    @ParameterizedTest
    @CsvSource({"5000, 14, true", "5000, 12.5, false", "2000, 30, false"})
    void howSteepSkirtsMayBeIsKnownAtFiveKilohertzOnly(double skirtHz, double meanDb, boolean regenerates) {
        judge.skirts(AT, skirtHz, 1, Math.pow(10, -(meanDb + 1) / 20), Math.pow(10, -(meanDb - 1) / 20));
        assertEquals(2, figure(CheckKind.SKIRTS), 1e-9);
        assertEquals(regenerates, suspected(Suspicion.REGENERATION));
    }

    /** A generator that begins with little signal is still to be turned up. */
    @Test
    void whatIsLittleAgainstTheUsualSignalIsNoHumHoweverWeakTheSignalWas() {
        judge.rest(AT, new Level(-0.25, 0), new Level(-0.2, 0.01), 0.5);
        assertFalse(suspected(Suspicion.HUM));
    }

    @ParameterizedTest
    @CsvSource({"0.023, false", "0.025, true"})
    void aRestThatWobblesByMoreThanThreeHundredthsOfTheSignalHums(double scatter, boolean hums) {
        judge.rest(AT, new Level(-1, 0), new Level(-0.2, scatter), 0.5);
        assertEquals(-0.2, figure(CheckKind.REST));
        assertEquals(hums, suspected(Suspicion.HUM));
    }

    @ParameterizedTest
    @CsvSource({"7, GOOD", "5, DOUBTFUL", "3.1, DOUBTFUL", "2.9, REFUSED"})
    void aReadingThatFollowsByLessThanHalfIsBelievedInNothing(double firstDb, Following following) {
        assertEquals(following, judge.level(AT, new Halvings(firstDb, OptionalDouble.empty())));
    }

    @Test
    void aCauseThatHasGoneIsTakenBackAndAnotherMayBeSuspected() {
        judge.effect(AT, 1, 1, Suspicion.WINDING);
        judge.effect(AT, 1, 1.5, Suspicion.WINDING);
        judge.loading(AT, 1, 0.5);
        assertEquals(
                List.of("effect", "possible-winding", "effect", "no-longer-possible", "loading", "possible-loading"),
                told.topics());
    }

    /** A detector of exponent 1.25: each step of 3 dB takes 3.75 dB off. */
    @Test
    void theLawOfADetectorIsToldStepByStepAndByItsMeanSlope() {
        List<Double> levels = List.of(1.0, 0.65, 0.42, 0.27, 0.178, 0.1155);
        judge.law(AT, levels);
        assertEquals(
                levels, told.all("law-step").stream().map(Told.Line::amount).toList());
        assertEquals(20 * Math.log10(1 / 0.1155) / 15, figure(CheckKind.DETECTOR_LAW), 1e-9);
    }

    @Test
    void stepsThatNobodyMadeTellNoLaw() {
        judge.law(AT, List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0));
        assertEquals(List.of(), told.all("law-step"));
        assertEquals(Double.NaN, figure(CheckKind.DETECTOR_LAW));
    }

    @Test
    void anAdjusterThatDoesNothingIsBlamedByItsKind() {
        Meter meter = new Meter(3, 1e-6);
        meter.watch.adjusterBegun("C6 padder");
        meter.command(LevelCommand.check(CheckKind.EFFECT))
                .read(2, 1)
                .done()
                .read(3, 1)
                .done();
        assertTrue(meter.told.heard("possible-padder"));
    }

    @Test
    void fiveStepsOfTheGeneratorTellTheLawOfTheDetector() {
        Meter meter = new Meter(3, 1e-6)
                .command(LevelCommand.check(CheckKind.DETECTOR_LAW))
                .read(2, 1);
        for (double level : new double[] {0.65, 0.42, 0.27, 0.178, 0.1155}) {
            meter.done().read(3, level);
        }
        assertEquals(6, meter.told.all("law-step").size());
    }
}
