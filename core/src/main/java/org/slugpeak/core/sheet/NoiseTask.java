package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.figure.ReceiverFigures;

/**
 * Signal with noise over noise at the input for the standard output, and the input at which it is 10 dB: each input with the modulation
 * on, then off. One thread at a time.
 */
final class NoiseTask implements SheetTask {

    private final AtDial dial;
    private final InputSearch search;
    private Optional<OutputReading> with = Optional.empty();
    private Optional<TransferPoint> first = Optional.empty();

    NoiseTask(AtDial dial, FoundInput sensitivity) {
        this.dial = dial;
        this.search = dial.search(ReceiverFigures.WANTED_RATIO_DB, sensitivity.inputDb());
    }

    @Override
    public List<FigureKind> kinds() {
        return List.of(FigureKind.SIGNAL_TO_NOISE, FigureKind.INPUT_FOR_TEN_DB);
    }

    @Override
    public Optional<InputSetting> next() {
        OptionalDouble inputDb = search.nextDb();
        return inputDb.isPresent() ? Optional.of(dial.atDial(inputDb.getAsDouble(), with.isEmpty())) : Optional.empty();
    }

    @Override
    public void take(InputSetting set, OutputReading reading) {
        if (with.isEmpty()) {
            with = Optional.of(reading);
            return;
        }
        OutputReading modulated = with.get();
        with = Optional.empty();
        TransferPoint ratio = new TransferPoint(
                Decibels.of(set.emfVolts()),
                ReceiverFigures.signalToNoiseDb(modulated, reading),
                modulated.uncertainty().with(reading.uncertainty()));
        first = first.or(() -> Optional.of(ratio));
        search.take(ratio);
    }

    @Override
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        first.filter(TransferPoint::isLevel)
                .ifPresent(it -> figures.add(dial.figure(
                        FigureKind.SIGNAL_TO_NOISE, it.outputDb(), it.uncertainty(), Figure.Outcome.MEASURED)));
        Optional<FoundInput> found = search.nextDb().isEmpty() ? search.found() : Optional.empty();
        found.ifPresent(it -> figures.add(dial.figure(
                FigureKind.INPUT_FOR_TEN_DB, Decibels.ratio(it.inputDb()), dial.set(it.uncertainty()), it.outcome())));
        return figures;
    }
}
