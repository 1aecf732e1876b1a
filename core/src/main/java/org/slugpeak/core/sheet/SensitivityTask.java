package org.slugpeak.core.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.generator.GeneratorSetting;

/**
 * The input for the standard output at the signal, the set tuned to it. Where the first level was far from it, a person has tuned at one
 * that was hardly heard or held down by the gain control: the set is tuned once more where it matters. One thread at a time.
 */
final class SensitivityTask implements SheetTask {

    private static final double FAR_DB = 10;

    private final AtDial dial;
    private InputSearch search;
    private Handwork handwork = Handwork.TUNE_SET;
    private boolean again;

    SensitivityTask(AtDial dial) {
        this.dial = dial;
        this.search = dial.search(dial.targetDb(), Decibels.of(GeneratorSetting.START_EMF_VOLTS));
    }

    @Override
    public List<FigureKind> kinds() {
        return List.of(FigureKind.SENSITIVITY);
    }

    @Override
    public Optional<InputSetting> next() {
        OptionalDouble inputDb = search.nextDb();
        return inputDb.isPresent()
                ? Optional.of(dial.atDial(inputDb.getAsDouble(), true).with(handwork))
                : Optional.empty();
    }

    @Override
    public void take(InputSetting set, OutputReading reading) {
        TransferPoint point = AtDial.point(set, reading);
        again = again || (handwork == Handwork.TUNE_SET && Math.abs(point.outputDb() - dial.targetDb()) > FAR_DB);
        handwork = Handwork.NONE;
        search.take(point);
        if (search.nextDb().isEmpty() && again) {
            again = false;
            search.found().filter(FoundInput::isMeasured).ifPresent(found -> {
                search = dial.search(dial.targetDb(), found.inputDb());
                handwork = Handwork.TUNE_SET;
            });
        }
    }

    @Override
    public List<Figure> figures() {
        Optional<FoundInput> found = search.nextDb().isEmpty() ? search.found() : Optional.empty();
        found.ifPresent(dial::isAsSensitiveAs);
        return found.stream()
                .map(it -> dial.figure(
                        FigureKind.SENSITIVITY, Decibels.ratio(it.inputDb()), dial.set(it.uncertainty()), it.outcome()))
                .toList();
    }
}
