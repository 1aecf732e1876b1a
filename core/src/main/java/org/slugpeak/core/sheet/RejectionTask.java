package org.slugpeak.core.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;

/**
 * How much more input another frequency than the signal needs for the same output. The greatest response near it counts: a hand tunes the
 * generator for it, one that obeys is stepped over it. One thread at a time.
 */
final class RejectionTask implements SheetTask {

    /** About where a set in order begins, dB. */
    private static final double START_DB = 30;

    private enum Stage {
        LEVEL,
        TOP,
        LEVEL_AT_TOP
    }

    private final AtDial dial;
    private final FigureKind kind;
    private final FoundInput sensitivity;
    private final TopSearch top;
    private Stage stage;
    private InputSearch search;
    private double atHz;
    private double responseDb = Double.NaN;

    /**
     * A measurement.
     *
     * @param kind image or intermediate frequency
     * @param nearHz where the response should be
     * @param stepHz in which one that obeys is stepped
     */
    RejectionTask(AtDial dial, FoundInput sensitivity, FigureKind kind, double nearHz, double stepHz) {
        this.dial = dial;
        this.sensitivity = sensitivity;
        this.kind = kind;
        this.atHz = nearHz;
        this.top = new TopSearch(nearHz, stepHz);
        this.stage = dial.obeys() ? Stage.LEVEL : Stage.LEVEL_AT_TOP;
        this.search = dial.search(dial.targetDb(), sensitivity.inputDb() + START_DB);
    }

    @Override
    public List<FigureKind> kinds() {
        return List.of(kind);
    }

    @Override
    public Optional<InputSetting> next() {
        if (stage == Stage.TOP) {
            return Optional.of(dial.setting(top.nextHz().orElseThrow(), levelDb(), true, Handwork.NONE));
        }
        Handwork handwork = dial.obeys() ? Handwork.NONE : Handwork.TUNE_GENERATOR;
        OptionalDouble inputDb = search.nextDb();
        return inputDb.isPresent()
                ? Optional.of(dial.setting(atHz, inputDb.getAsDouble(), true, handwork))
                : Optional.empty();
    }

    /** So that about the reference is read where the response is the best one so far. */
    private double levelDb() {
        return Math.min(dial.highDb(), dial.targetDb() - responseDb);
    }

    @Override
    public void take(InputSetting set, OutputReading reading) {
        TransferPoint point = AtDial.point(set, reading);
        if (stage == Stage.TOP) {
            step(point);
            return;
        }
        search.take(point);
        if (search.nextDb().isEmpty() && stage == Stage.LEVEL) {
            search.found().ifPresent(found -> {
                responseDb = dial.targetDb() - found.inputDb();
                stage = Stage.TOP;
            });
        }
    }

    private void step(TransferPoint point) {
        top.take(point.outputDb() - point.inputDb());
        responseDb = Math.max(responseDb, Double.isFinite(top.bestDb()) ? top.bestDb() : responseDb);
        if (top.nextHz().isEmpty()) {
            stage = Stage.LEVEL_AT_TOP;
            atHz = top.topHz();
            search = dial.search(dial.targetDb(), levelDb());
        }
    }

    @Override
    public List<Figure> figures() {
        boolean over = stage == Stage.LEVEL_AT_TOP && search.nextDb().isEmpty();
        Optional<FoundInput> found = over ? search.found() : Optional.empty();
        return found.stream()
                .map(it -> dial.figure(
                        kind,
                        it.inputDb() - sensitivity.inputDb(),
                        dial.set(it.uncertainty()).with(dial.set(sensitivity.uncertainty())),
                        it.outcome()))
                .toList();
    }
}
