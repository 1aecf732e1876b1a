package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

class ConstantGeneratorTest {

    private final ConstantGenerator volts = new ConstantGenerator("V", false);

    private static void tell(ConstantGenerator scale, SessionRecord... records) {
        List.of(records).forEach(each -> each.tellFamily(scale));
    }

    private static Caution.Checked restAt(double level) {
        return new Caution.Checked(0, CheckKind.REST, CheckFigures.of(level));
    }

    /** Whatever is done to the generator: if the readings followed, the set stands where it stood. */
    @Property
    void aTurnOfTheGeneratorMovesNothing(
            @ForAll @Size(max = 8) List<@DoubleRange(min = -20, max = 20) Double> turnsDb,
            @ForAll @DoubleRange(min = 0.01, max = 10) double level,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double rest) {
        ConstantGenerator scale = new ConstantGenerator("V", false);
        tell(scale, restAt(rest));
        double first = scale.of(rest + level).value();
        double now = level;
        for (double turnDb : turnsDb) {
            now *= Decibels.ratio(turnDb);
            tell(scale, new Request.GeneratorChanged(1, turnDb));
        }
        assertEquals(first, scale.of(rest + now).value(), 1e-9);
        assertEquals(turnsDb.size(), scale.turns().size());
    }

    @Test
    void decibelsOfAMeterInDecibelsAreItsOwn() {
        ConstantGenerator scale = new ConstantGenerator("dBFS", false);
        tell(scale, restAt(-70), new Request.GeneratorChanged(0, -6));
        assertEquals(-14, scale.of(-20).value());
    }

    /** The clips have moved: what was read before has nothing to do with what is read now. */
    @Test
    void aNewRestingReadingBeginsANewScale() {
        int before = volts.of(1).scale();
        tell(volts, new Request.GeneratorChanged(0, -6), restAt(0.1));
        assertNotEquals(before, volts.of(1).scale());
        assertEquals(0, volts.changeDb());
    }

    @Test
    void aPointThatIsMetAgainRestsWhereItDid() {
        tell(volts, at(MeterPoint.DETECTOR), restAt(0.1), at(MeterPoint.DISCRIMINATOR));
        assertEquals(0, volts.of(1).value(), 1e-12, "nothing is known of its rest");
        int there = volts.of(1).scale();
        tell(volts, at(MeterPoint.DISCRIMINATOR));
        assertEquals(there, volts.of(1).scale(), "the clips stayed");
        tell(volts, at(MeterPoint.DETECTOR));
        assertEquals(0, volts.of(1.1).value(), 1e-12);
    }

    private static SessionRecord at(MeterPoint point) {
        return new Said.Command(0, new Instruction.Level(LevelCommand.at(point)));
    }

    @Test
    void aroundAZeroTheReadingsStandInTheirUnit() {
        tell(volts, new Said.Command(0, new Instruction.Find(Seek.ZERO)));
        assertTrue(volts.of(-0.3).inUnit());
        assertEquals(-0.3, volts.of(-0.3).value());
        tell(volts, new Said.Command(0, new Instruction.Find(Seek.PEAK)));
        assertFalse(volts.of(-0.3).inUnit());
    }

    @Test
    void aDipAfterAPeakKeepsTheScale() {
        int before = volts.of(1).scale();
        tell(volts, new Said.Command(0, new Instruction.Find(Seek.DIP)));
        assertEquals(before, volts.of(1).scale());
    }

    /** A check turns the generator off, or down and up again; live it asks, and a log tells it in words. */
    @Test
    void aCheckSaysNothingOfTheSetUntilItIsOver() {
        for (SessionRecord asked : List.of(
                new Request.Asked(0, CheckKind.REST, 0, Double.NaN, Double.NaN),
                new Logged(0, Logged.Topic.ASKED, Double.NaN))) {
            for (SessionRecord over : List.of(new Request.CheckOver(1), new Request.CheckDropped(1, 20))) {
                tell(volts, asked);
                assertTrue(volts.isChecking());
                tell(volts, over);
                assertFalse(volts.isChecking());
            }
        }
    }

    @Test
    void nothingAtAllIsFarBelowEverything() {
        assertEquals(ConstantGenerator.NOTHING_DB, volts.of(0).value());
    }
}
