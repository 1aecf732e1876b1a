package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.Seek;

class GainSumsTest {

    private final GainSums sums = new GainSums(Seek.PEAK);

    private void done(String name, double after, double gainDb) {
        sums.take(new Adjuster(0, name, Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
        sums.take(new Adjuster(0, name, Adjuster.Action.DONE, 0.5, after, gainDb));
    }

    private void path(String name) {
        sums.take(new Work.PathBegun(0, name));
    }

    private void seek(Seek seek) {
        sums.take(new Said.Command(0, new Instruction.Find(seek)));
    }

    @Test
    void gainsAddUpAlongOnePathOnlyAndGoOnWhenTheWorkComesBackToIt() {
        sums.take(new Work.PlanBegun(0, "Tarnfield 54A"));
        path("AM IF");
        done("T1", 1, 8);
        path("MW, 1400 kHz");
        done("C5", 1, 3);
        path("MW, 600 kHz");
        done("L5", 1, 2);
        path("MW, 1400 kHz");
        done("C5", 1, 0.5);
        assertEquals(
                List.of(
                        new Gains.Sum("AM IF", 8, 1),
                        new Gains.Sum("MW, 1400 kHz", 3.5, 2),
                        new Gains.Sum("MW, 600 kHz", 2, 1)),
                sums.gains().sums());
        assertEquals(4, sums.gains().adjustments());
    }

    @Test
    void aZeroIsToldAsItWasLeftLastAndNeverInDecibels() {
        path("FM");
        seek(Seek.ZERO);
        done("T4 bottom", -0.31, -12);
        done("T4 bottom", 0.002, -88.8);
        assertEquals(List.of(), sums.gains().sums());
        assertEquals(List.of(new Gains.Zero("T4 bottom", 0.002)), sums.gains().zeros());
    }

    @Test
    void whatADipLosesIsNotTakenFromWhatAPeakGains() {
        done("T1", 1, 8);
        seek(Seek.DIP);
        done("L1", 0.1, -20);
        assertEquals(
                List.of(8.0, -20.0),
                sums.gains().sums().stream().map(Gains.Sum::gainDb).toList());
    }

    @Test
    void anotherMeterPointIsAnotherSum() {
        done("T1", 1, 8);
        sums.take(new Said.Command(0, new Instruction.Level(LevelCommand.at(MeterPoint.AVC))));
        done("T1", 1, 1);
        assertEquals(2, sums.gains().sums().size());
    }

    @Test
    void inALogOfAPlanThatDoesNotTellThePathsNothingIsAdded() {
        sums.take(new Work.PlanBegun(0, "Tarnfield 54A"));
        done("T1", 1, 8);
        assertEquals(new Gains(1, List.of(), List.of()), sums.gains());
    }

    @Test
    void whatIsLeftAsItIsAndWhatHasNoDecibelsIsNotAdded() {
        sums.take(new Adjuster(0, "T1", Adjuster.Action.SKIP, 0.5, 1, 6));
        done("T2", 1, Double.NaN);
        assertEquals(new Gains(1, List.of(), List.of()), sums.gains());
    }
}
