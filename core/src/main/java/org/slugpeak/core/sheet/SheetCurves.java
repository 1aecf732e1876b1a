package org.slugpeak.core.sheet;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.session.SheetWork;

/** The curves behind the figures of a sheet, from the outputs that were taken for them. All methods are pure; any thread may use them. */
public final class SheetCurves {

    private SheetCurves() {}

    /**
     * A place of a curve.
     *
     * @param x input, dB over a volt EMF; or distance from the signal, Hz
     * @param db output, dB over a volt; or loss, dB
     */
    public record Place(double x, double db) {}

    /**
     * Output against input.
     *
     * @param outputs of one sheet
     * @return in the order in which they were taken: from the strongest input down, then between
     */
    public static List<Place> avc(List<SheetWork.OutputTaken> outputs) {
        return outputs.stream()
                .filter(it -> it.kind() == FigureKind.AVC
                        && it.setting().modulated()
                        && it.output().isLevel())
                .map(it -> new Place(
                        Decibels.of(it.setting().emfVolts()), it.output().levelDb()))
                .toList();
    }

    /**
     * Loss against distance from the signal.
     *
     * @param conditions of the sheet
     * @param outputs of it
     * @return by distance; empty where selectivity or the sensitivity there was not measured
     */
    public static List<Place> selectivity(Conditions conditions, List<SheetWork.OutputTaken> outputs) {
        double targetDb = Decibels.of(conditions.referenceVolts());
        return outputs.stream()
                .filter(it -> it.kind() == FigureKind.WIDTH_6_DB)
                .findFirst()
                .flatMap(it -> sensitivity(targetDb, it.setting().dialHz(), outputs))
                .map(found -> outputs.stream()
                        .filter(it -> it.kind() == FigureKind.WIDTH_6_DB)
                        .filter(it -> Math.abs(it.output().levelDb() - targetDb) <= SelectivityTask.NEAR_DB)
                        .map(it -> place(it, targetDb, found))
                        .sorted((one, other) -> Double.compare(one.x(), other.x()))
                        .toList())
                .orElse(List.of());
    }

    private static Place place(SheetWork.OutputTaken it, double targetDb, FoundInput signal) {
        double restDb = (targetDb - it.output().levelDb()) / signal.slope();
        double inputDb = Decibels.of(it.setting().emfVolts()) + restDb;
        return new Place(it.setting().frequencyHz() - it.setting().dialHz(), inputDb - signal.inputDb());
    }

    private static Optional<FoundInput> sensitivity(
            double targetDb, double dialHz, List<SheetWork.OutputTaken> outputs) {
        InputSearch search = new InputSearch(targetDb, targetDb, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        outputs.stream()
                .filter(it ->
                        it.kind() == FigureKind.SENSITIVITY && it.setting().dialHz() == dialHz)
                .forEach(it -> search.take(AtDial.point(it.setting(), it.output())));
        return search.found().filter(FoundInput::isMeasured);
    }
}
