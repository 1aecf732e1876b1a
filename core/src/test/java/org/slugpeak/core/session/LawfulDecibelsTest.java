package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.DiodeDetector;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.ThermionicDiode;

/**
 * An adjuster is turned before a thermionic detector (its law is held against shared/reference/detector elsewhere): decibels are those of
 * the circuit once five steps of the generator have shown what the detector makes of it, whatever rests, and whoever turns the generator.
 */
class LawfulDecibelsTest {

    private static final long STEP_NANOS = 20_000_000;
    private static final double NOISE_VOLTS = 1e-4;

    /** A rise of 1.2 V, about. */
    private static final double PLENTY_VOLTS = 1.9;

    private final List<SessionRecord> records = new ArrayList<>();
    private final Analysis analysis = new Analysis(PeakSettings.defaults(), records::add);
    private final SplittableRandom random = new SplittableRandom(1706);
    private final EnvelopeDetector detector;
    private final double restVolts;
    private double generator = 1;
    private double response = 1;
    private long tNanos;

    LawfulDecibelsTest() {
        DiodeDetector diode = new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, 470e3), 470e3, 0);
        detector = EnvelopeDetector.of(diode);
        restVolts = -0.22;
    }

    private void read(double seconds) {
        for (long end = tNanos + (long) (seconds * 1e9); tNanos < end; tNanos += STEP_NANOS) {
            double rise = detector.riseVolts(generator * response);
            analysis.reading(Reading.of(tNanos, restVolts - rise + NOISE_VOLTS * random.nextGaussian()));
        }
    }

    private void command(LevelCommand command) {
        analysis.command(new Instruction.Level(command));
    }

    private void rest() {
        double before = generator;
        command(LevelCommand.check(CheckKind.REST));
        read(2);
        generator = 0;
        read(2);
        generator = before;
        read(2);
    }

    private void law() {
        double before = generator;
        command(LevelCommand.check(CheckKind.DETECTOR_LAW));
        read(2);
        for (int step = 1; step <= 5; step++) {
            generator = before * Decibels.ratio(-3 * step);
            command(LevelCommand.done());
            read(2);
        }
        generator = before;
        command(LevelCommand.done());
        read(1);
    }

    /** One slug, x in half-widths, past its peak and back; it is held there. */
    private void turn(double fromX) {
        double fastest = Math.max(0.005, -fromX / 2000);
        for (double x = fromX; x < 0.5; x += fastest) {
            response = 1 / Math.sqrt(1 + x * x);
            read(0.02);
        }
        for (double x = 0.5; x > 0; x -= fastest) {
            response = 1 / Math.sqrt(1 + x * x);
            read(0.02);
        }
        response = 1;
        read(4);
    }

    private Adjuster last() {
        return (Adjuster) records.stream()
                .filter(each -> each instanceof Adjuster it && it.action() == Adjuster.Action.DONE)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private double gainDb(double volts, double fromX, boolean withLaw) {
        generator = volts;
        response = 1;
        command(LevelCommand.at(MeterPoint.DETECTOR));
        rest();
        response = 1 / Math.sqrt(1 + fromX * fromX);
        read(2);
        if (withLaw) {
            generator = PLENTY_VOLTS / response;
            read(2);
            law();
            generator = volts;
            read(2);
        }
        analysis.nextAdjuster("T2 top");
        turn(fromX);
        analysis.adjusterEnded(Adjuster.Action.DONE);
        return last().gainDb();
    }

    @ParameterizedTest
    @CsvSource({"0.5, -1", "0.8, -2", "1.2, -3"})
    void theGainOfAnAdjusterIsThatOfItsCircuit(double volts, double fromX) {
        double trueDb = Decibels.of(Math.sqrt(1 + fromX * fromX));
        assertTrue(gainDb(volts, fromX, false) > trueDb + 0.5);
        assertEquals(trueDb, gainDb(volts, fromX, true), 0.06);
        assertEquals(trueDb, gainDb(volts, fromX, false), 0.06, "the law is known still");
    }

    /** Half a millivolt above a rest that is known to a millivolt: 60 dB and more would be told. */
    @Test
    void whereThereWasNextToNothingBeforeNobodyKnowsWhatWasGained() {
        assertTrue(Double.isNaN(gainDb(1.2, -60, false)));
    }

    @Test
    void turnsOfTheGeneratorAreTakenOutOfTheGainByTheLawToo() {
        gainDb(1.6, -1, true);
        response = 1 / Math.sqrt(2);
        generator = 1.6;
        read(2);
        analysis.nextAdjuster("T2 bottom");
        read(1);
        command(LevelCommand.cut(0.5));
        generator /= 2;
        read(2);
        Request.GeneratorChanged changed = (Request.GeneratorChanged) records.stream()
                .filter(each -> each instanceof Request.GeneratorChanged)
                .reduce((first, second) -> second)
                .orElseThrow();
        assertEquals(-Decibels.of(2), changed.changeDb(), 0.06);
        turn(-1);
        analysis.adjusterEnded(Adjuster.Action.DONE);
        assertEquals(Decibels.of(2) / 2, last().gainDb(), 0.1);
    }
}
