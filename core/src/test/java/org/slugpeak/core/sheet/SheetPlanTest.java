package org.slugpeak.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

class SheetPlanTest {

    private static final Band MEDIUM = new Band("MW", 530e3, 1620e3);
    private static final Band SHORT =
            new Band("SW", 5.8e6, 18.2e6, Optional.of(OscillatorSide.BELOW), TuningElement.CAPACITOR);

    private static PlanStep step(double generatorHz, OptionalDouble dialHz, Band band, String dummy) {
        Setup setup = new Setup(
                OptionalDouble.of(generatorHz),
                "none",
                "antenna",
                dummy,
                dialHz,
                "",
                "detector",
                Optional.empty(),
                HighTension.POSSIBLE,
                new Particulars(
                        Optional.of(band),
                        Optional.empty(),
                        false,
                        Optional.of(MeterPoint.DETECTOR),
                        Optional.empty()));
        return new PlanStep(
                "C" + generatorHz, Goal.PEAK, setup, false, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    private static PlanStep tuned(double hz, Band band, String dummy) {
        return step(hz, OptionalDouble.of(hz), band, dummy);
    }

    private static List<Station> stations(PlanStep... steps) {
        Plan plan = new Plan(
                "test",
                Chassis.TRANSFORMER,
                List.of(),
                List.of(new IntermediateFrequency("IF", 455e3)),
                List.of(MEDIUM, SHORT),
                List.of(new Stage("RF", List.of(steps), new RepeatRule(0.2, 2))),
                List.of());
        return SheetPlan.of(plan, MeterPoint.VOICE_COIL);
    }

    private static List<Double> dials(List<Station> stations) {
        return stations.stream().map(Station::dialHz).toList();
    }

    @Test
    void measuresAtTheEndsOfABandAndBetween() {
        List<Station> stations = stations(tuned(1400e3, MEDIUM, "200 pF"), tuned(600e3, MEDIUM, "200 pF"));
        assertEquals(List.of(600e3, 1000e3, 1400e3), dials(stations));
        assertTrue(stations.get(0).wants(FigureKind.IF_REJECTION));
        assertTrue(stations.get(1).wants(FigureKind.AVC) && stations.get(1).wants(FigureKind.WIDTH_40_DB));
        assertEquals(List.of(1400e3, 2310e3), stations.get(2).frequenciesHz());
    }

    @Test
    void measuresAllAtTheOneDialOfABandAndCurvesOnlyInTheFirst() {
        List<Station> stations = stations(tuned(1000e3, MEDIUM, "200 pF"), tuned(16e6, SHORT, "400 ohm"));
        assertEquals(List.of(1000e3, 16e6), dials(stations));
        assertTrue(stations.get(0).wants(FigureKind.AVC));
        assertEquals(
                List.of(16e6, 16e6 - 910e3, 455e3), stations.get(1).frequenciesHz(), "the oscillator runs below here");
        assertTrue(Stream.of(FigureKind.AVC, FigureKind.WIDTH_6_DB)
                .noneMatch(kind -> stations.get(1).wants(kind)));
        assertEquals("400 ohm", stations.get(1).setup().dummyAntenna());
        assertEquals(
                Optional.of(MeterPoint.VOICE_COIL),
                stations.get(1).setup().particulars().point());
    }

    @Test
    void leavesOutWhatIsNotTunedToASignalAndWhatIsForFrequencyModulation() {
        List<Station> stations = stations(
                step(455e3, OptionalDouble.of(1000e3), MEDIUM, ""),
                step(455e3, OptionalDouble.empty(), MEDIUM, ""),
                tuned(98e6, MEDIUM, "300 ohm"));
        assertEquals(List.of(), stations);
    }
}
