package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.figure.ReceiverFigures;
import org.slugpeak.core.figure.Uncertainty;

/**
 * Output against input, from the strongest input down in steps of {@value #STEP_DB} dB, the volume turned down first so that the
 * output stage does not limit; then the input at which the output has fallen by 10 dB. Hum and noise, and the distortion of a tone that is heard, are read at the strongest input.
 * One thread at a time.
 */
final class AvcTask implements SheetTask {

    private static final double STEP_DB = 10;

    private final AtDial dial;
    private final double topDb;
    private final List<TransferPoint> curve = new ArrayList<>();
    private Optional<OutputReading> strongest = Optional.empty();
    private Optional<OutputReading> hum = Optional.empty();
    private Optional<InputSearch> search = Optional.empty();
    private Optional<DistortionWatch.Distortion> distortion = Optional.empty();

    AvcTask(AtDial dial) {
        this.dial = dial;
        this.topDb = Math.min(dial.highDb(), Decibels.of(ReceiverFigures.STRONGEST_EMF_VOLTS));
    }

    @Override
    public List<FigureKind> kinds() {
        List<FigureKind> kinds = new ArrayList<>(List.of(FigureKind.AVC));
        if (dial.readsPower()) {
            kinds.add(FigureKind.HUM);
        }
        distortion.ifPresent(heard -> kinds.add(FigureKind.DISTORTION));
        return kinds;
    }

    @Override
    public Optional<InputSetting> next() {
        if (strongest.isEmpty()) {
            Handwork handwork = dial.readsPower() ? Handwork.TURN_VOLUME_DOWN : Handwork.NONE;
            return Optional.of(dial.atDial(topDb, true).with(handwork));
        }
        if (dial.readsPower() && hum.isEmpty()) {
            return Optional.of(dial.atDial(topDb, false));
        }
        if (search.isEmpty()) {
            return Optional.of(dial.atDial(topDb - curve.size() * STEP_DB, true));
        }
        return search.get().nextDb().stream()
                .mapToObj(inputDb -> dial.atDial(inputDb, true))
                .findFirst();
    }

    /** With the output at the reference, where the strongest input leaves the least of noise. */
    @Override
    public void hear(DistortionWatch.Distortion heard) {
        if (strongest.isEmpty() && dial.readsPower()) {
            distortion = Optional.of(heard);
        }
    }

    @Override
    public void take(InputSetting set, OutputReading reading) {
        if (strongest.isPresent() && dial.readsPower() && hum.isEmpty()) {
            hum = Optional.of(reading);
            return;
        }
        TransferPoint point = AtDial.point(set, reading);
        strongest = strongest.or(() -> Optional.of(reading));
        if (search.isPresent()) {
            search.get().take(point);
            return;
        }
        curve.add(point);
        if (curve.size() * STEP_DB > ReceiverFigures.AVC_SPAN_DB) {
            search = Optional.of(fallen());
        }
    }

    /** Goes on from what the curve shows. */
    private InputSearch fallen() {
        InputSearch from = dial.search(wantedDb(), topDb);
        curve.stream().filter(TransferPoint::isLevel).forEach(from::take);
        return from;
    }

    private double wantedDb() {
        return curve.get(0).outputDb() - ReceiverFigures.AVC_FALL_DB;
    }

    @Override
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        avc().ifPresent(figures::add);
        if (strongest.isPresent() && hum.filter(OutputReading::isLevel).isPresent()) {
            double belowDb = ReceiverFigures.signalToNoiseDb(strongest.get(), hum.get());
            Uncertainty both = strongest.get().uncertainty().with(hum.get().uncertainty());
            Uncertainty ofLevel = dial.set(Uncertainty.NONE).times(topSlope());
            figures.add(dial.figure(FigureKind.HUM, belowDb, both.with(ofLevel), Figure.Outcome.MEASURED));
        }
        distortion.ifPresent(heard -> figures.add(dial.ratio(FigureKind.DISTORTION, heard.ratio(), heard.sigma())));
        return figures;
    }

    /** Decibels of output that a decibel of input makes at the top; one where that was not measured, as without gain control. */
    private double topSlope() {
        boolean known =
                curve.size() > 1 && curve.get(0).isLevel() && curve.get(1).isLevel();
        return known ? Math.abs(curve.get(0).outputDb() - curve.get(1).outputDb()) / STEP_DB : 1;
    }

    private Optional<Figure> avc() {
        Optional<InputSearch> over = search.filter(it -> it.nextDb().isEmpty());
        if (over.isEmpty()) {
            return Optional.empty();
        }
        boolean falls = curve.stream().anyMatch(it -> it.outputDb() <= wantedDb());
        return falls
                ? over.get().found().map(this::fall)
                : Optional.of(dial.figure(
                        FigureKind.AVC, ReceiverFigures.AVC_SPAN_DB, Uncertainty.NONE, Figure.Outcome.AT_LEAST));
    }

    private Figure fall(FoundInput found) {
        Uncertainty ofTop = curve.get(0).uncertainty().times(1 / found.slope());
        Uncertainty both = dial.set(found.uncertainty()).with(dial.set(ofTop));
        return dial.figure(FigureKind.AVC, curve.get(0).inputDb() - found.inputDb(), both, Figure.Outcome.MEASURED);
    }
}
