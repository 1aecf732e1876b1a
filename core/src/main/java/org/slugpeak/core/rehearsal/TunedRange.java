package org.slugpeak.core.rehearsal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.SingleTuned;

/**
 * A circuit that the gang tunes over a range. With its parts in their working positions it stands at the pointer, or where the
 * pointer makes the oscillator run: the dial was drawn for it, and tracking counts as perfect. What its parts change is exact for
 * a coil across gang and trimmer, and to the first order for a padder. One thread at a time.
 *
 * <p>Tuned by slugs instead, the capacitance stays, so that a trimmer tells the same fraction everywhere, and the coil that is turned
 * lies across the one that the carriage moves: it takes the padder's place and tells most at the low end. That is the same arithmetic
 * with coil and capacitor exchanged ({@code shared/reference/rehearsal}), to the first order.
 *
 * @param tuning what moves with the pointer
 * @param offsetHz what it stands above the pointer
 * @param lowHz where it stands at the low end
 * @param topHz where it stands at the high end
 * @param topFarad its capacitance there
 * @param padderFarad in series with the gang
 * @param parts that are turned, by their kind
 */
record TunedRange(
        TuningElement tuning,
        double offsetHz,
        double lowHz,
        double topHz,
        double topFarad,
        double padderFarad,
        Map<PartKind, List<Knob>> parts) {

    TunedRange {
        parts = parts.isEmpty() ? Map.of() : new EnumMap<>(parts);
    }

    double hz(double dialHz) {
        double tuned = dialHz + offsetHz;
        double farad = farad(tuned);
        double capacitance = 1 + sum(PartKind.TRIMMER) / farad;
        double series = 1 + sum(PartKind.PADDER) * farad / padderFarad;
        double coil = 1 + sum(PartKind.COIL) * coilShare(tuned);
        return tuned / Math.sqrt(capacitance * series * coil);
    }

    /** What its turned parts are worth as capacitance across it. */
    double addedFarad(double dialHz) {
        double tunedHz = dialHz + offsetHz;
        double ratio = tunedHz / hz(dialHz);
        return farad(tunedHz) * (ratio * ratio - 1);
    }

    /** Capacitance across its coil where it is tuned to. */
    double farad(double tunedHz) {
        return switch (tuning) {
            case CAPACITOR -> topFarad * topHz * topHz / (tunedHz * tunedHz);
            case PERMEABILITY -> topFarad;
        };
    }

    /** How much a coil that is turned tells, 1 at the low end. */
    private double coilShare(double tunedHz) {
        return switch (tuning) {
            case CAPACITOR -> 1;
            case PERMEABILITY -> lowHz * lowHz / (tunedHz * tunedHz);
        };
    }

    private double sum(PartKind kind) {
        return parts.getOrDefault(kind, List.of()).stream()
                .mapToDouble(Knob::effect)
                .sum();
    }

    /** What a signal is worth behind it, 1 in tune. */
    double response(double hz, double dialHz, double q) {
        return new SingleTuned(hz(dialHz), q).response(hz).abs();
    }

    /** By what fraction a turn of a kind of part moves the frequency at a place of the dial. */
    double perTurn(PartKind kind, double turnsWorth, double dialHz) {
        double farad = farad(dialHz + offsetHz);
        return switch (kind) {
            case TRIMMER -> turnsWorth / farad / 2;
            case PADDER -> turnsWorth * farad / padderFarad / 2;
            case COIL -> turnsWorth * coilShare(dialHz + offsetHz) / 2;
        };
    }
}
