package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.AvcLine;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.receiver.Superhet;

/**
 * Where a receiver is measured, as its alignment plan has it: in each band at the lowest and the highest dial at which an adjuster is set on
 * a signal, and between them. The image is measured at the highest, where it is rejected least, the intermediate frequency at the
 * lowest, selectivity and gain control at the middle of the first band. All methods are pure; any thread may use them.
 */
public final class SheetPlan {

    /** Above are receivers for frequency modulation, which are measured otherwise. */
    private static final double HIGHEST_HZ = 30e6;

    private SheetPlan() {}

    /**
     * The places of a plan.
     *
     * @param plan of the receiver
     * @param point where the meter stands
     * @return in the order of the plan's bands; empty where no step is set on a signal below 30 MHz
     */
    public static List<Station> of(Plan plan, MeterPoint point) {
        Map<String, NavigableMap<Double, PlanStep>> bands = new LinkedHashMap<>();
        plan.stages().stream()
                .flatMap(stage -> stage.steps().stream())
                .filter(step -> isOnSignal(step.setup()))
                .forEach(step -> bands.computeIfAbsent(
                                step.setup()
                                        .particulars()
                                        .band()
                                        .map(Band::name)
                                        .orElse(""),
                                any -> new TreeMap<>())
                        .putIfAbsent(step.setup().dialHz().orElseThrow(), step));
        List<Station> stations = new ArrayList<>();
        bands.values().forEach(steps -> stations.addAll(band(plan, point, steps, stations.isEmpty())));
        return List.copyOf(stations);
    }

    private static boolean isOnSignal(Setup setup) {
        return setup.isTunedIn() && setup.dialHz().getAsDouble() <= HIGHEST_HZ;
    }

    private static List<Station> band(
            Plan plan, MeterPoint point, NavigableMap<Double, PlanStep> steps, boolean first) {
        double lowHz = steps.firstKey();
        double highHz = steps.lastKey();
        double middleHz = lowHz == highHz ? lowHz : Rounded.toDigits((lowHz + highHz) / 2, 2);
        List<Station> stations = new ArrayList<>();
        for (double dialHz :
                DoubleStream.of(lowHz, middleHz, highHz).distinct().sorted().toArray()) {
            Set<FigureKind> wanted = EnumSet.noneOf(FigureKind.class);
            if (dialHz == lowHz) {
                wanted.add(FigureKind.IF_REJECTION);
            }
            if (dialHz == highHz) {
                wanted.add(FigureKind.IMAGE_REJECTION);
            }
            if (first && dialHz == middleHz) {
                wanted.addAll(FigureKind.WIDTHS);
                wanted.add(FigureKind.AVC);
            }
            stations.add(station(plan, point, steps.floorEntry(dialHz).getValue(), dialHz, wanted));
        }
        return stations;
    }

    private static Station station(Plan plan, MeterPoint point, PlanStep step, double dialHz, Set<FigureKind> wanted) {
        Setup setup = step.setup();
        Particulars said = setup.particulars();
        double intermediateHz = said.intermediate().map(it -> it.hz()).orElseGet(() -> plan.intermediateHz(dialHz));
        OscillatorSide side = step.oscillator().orElse(OscillatorSide.ABOVE);
        Setup wants = new Setup(
                OptionalDouble.empty(),
                Modulation.TEST_TONE_WORDS,
                setup.injection(),
                setup.dummyAntenna(),
                OptionalDouble.empty(),
                "",
                "",
                Optional.empty(),
                setup.highTension(),
                new Particulars(
                        said.band(),
                        Optional.empty(),
                        false,
                        Optional.of(point),
                        said.avc().map(any -> AvcLine.FREE)));
        double narrowestHz =
                plan.intermediatesHz().stream().min(Double::compare).orElse(intermediateHz);
        return new Station(
                dialHz, new Superhet(intermediateHz, side), Math.min(narrowestHz, intermediateHz), wants, wanted);
    }
}
