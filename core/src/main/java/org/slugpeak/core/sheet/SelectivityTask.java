package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.figure.Uncertainty;

/**
 * The selectivity of the whole set at constant output: at each frequency off the signal about as much more input as it takes, and for the
 * rest the slope at the signal. So neither detector nor gain control bends it. One thread at a time.
 */
final class SelectivityTask implements SheetTask {

    private static final Map<FigureKind, Double> LOSSES_DB =
            Map.of(FigureKind.WIDTH_6_DB, 6.0, FigureKind.WIDTH_20_DB, 20.0, FigureKind.WIDTH_40_DB, 40.0);

    /** A little beyond the last width, so that it lies between two settings. */
    private static final double ENOUGH_DB = 42;

    /** Steps become wider on the skirts, where the curve bends less. */
    private static final double WIDENING = 1.25;

    private static final int MOST_POINTS = 24;

    /** A crystal is narrower than the strip behind it, by which the step goes. */
    private static final int FINEST = 16;

    /** Further off the slope at the signal no longer tells what is missing. */
    static final double NEAR_DB = 2.5;

    private static final double LONGEST_STEP_DB = 15;
    private static final int MOST_TRIES = 4;

    /** How far the slope may be off so near, as in a search. */
    private static final double BEND = 0.1;

    private final AtDial dial;
    private final FoundInput sensitivity;
    private final double stepHz;
    private final SelectivityCurve curve = new SelectivityCurve();
    private boolean upwards = true;
    private double lossDb;
    private double offHz;
    private int tries;
    private int points;
    private boolean over;

    SelectivityTask(AtDial dial, FoundInput sensitivity, double stepHz) {
        this.dial = dial;
        this.sensitivity = sensitivity;
        this.stepHz = stepHz;
    }

    @Override
    public List<FigureKind> kinds() {
        return FigureKind.WIDTHS;
    }

    @Override
    public Optional<InputSetting> next() {
        if (over) {
            return Optional.empty();
        }
        if (tries == 0) {
            offHz = offHz();
        }
        double hz = dial.station().dialHz() + offHz;
        return Optional.of(dial.setting(hz, inputDb(), true, Handwork.NONE));
    }

    /** Between two settings where the skirt is too steep for the step, else outwards. */
    private double offHz() {
        OptionalDouble between = curve.steepHz(upwards, stepHz / FINEST);
        if (between.isPresent()) {
            return between.getAsDouble();
        }
        double lastHz = Math.abs(curve.lastHz(upwards));
        double nextHz = Math.max(lastHz + stepHz, stepHz / 2 * Math.rint(lastHz * WIDENING / stepHz * 2));
        return upwards ? nextHz : -nextHz;
    }

    private double inputDb() {
        double wantedDb = tries == 0 ? curve.expectedDb(offHz) : lossDb;
        return Math.min(dial.highDb(), sensitivity.inputDb() + wantedDb);
    }

    @Override
    public void take(InputSetting set, OutputReading reading) {
        TransferPoint point = AtDial.point(set, reading);
        double missingDb = dial.targetDb() - point.outputDb();
        boolean highest = point.inputDb() >= dial.highDb() && missingDb > NEAR_DB;
        tries++;
        if (Math.abs(missingDb) <= NEAR_DB) {
            known(set, point, missingDb);
        } else if (highest || tries >= MOST_TRIES) {
            turn();
        } else {
            double changeDb = Math.max(-LONGEST_STEP_DB, Math.min(LONGEST_STEP_DB, missingDb / sensitivity.slope()));
            lossDb = point.inputDb() - sensitivity.inputDb() + changeDb;
        }
    }

    private void known(InputSetting set, TransferPoint point, double missingDb) {
        double restDb = missingDb / sensitivity.slope();
        Uncertainty uncertainty = dial.set(point.uncertainty()
                        .times(1 / sensitivity.slope())
                        .interpolated(Math.abs(restDb) * BEND / Math.sqrt(3)))
                .with(dial.set(sensitivity.uncertainty()));
        double knownDb = point.inputDb() + restDb - sensitivity.inputDb();
        curve.take(set.frequencyHz() - dial.station().dialHz(), knownDb, uncertainty.sigmaDb());
        points++;
        tries = 0;
        boolean smooth = curve.steepHz(upwards, stepHz / FINEST).isEmpty();
        if ((curve.lastDb(upwards) >= ENOUGH_DB && smooth) || points >= MOST_POINTS) {
            turn();
        }
    }

    private void turn() {
        tries = 0;
        points = 0;
        over = !upwards;
        upwards = false;
    }

    @Override
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (FigureKind kind : FigureKind.WIDTHS) {
            curve.width(LOSSES_DB.getOrDefault(kind, Double.NaN)).ifPresent(width -> figures.add(figure(kind, width)));
        }
        return figures;
    }

    private Figure figure(FigureKind kind, SelectivityCurve.Width width) {
        double dialHz = dial.station().dialHz();
        double marksHz = dial.apartSigmaHz(dialHz + width.lowerHz(), dialHz + width.upperHz());
        Limit limit = marksHz > width.sigmaHz()
                ? Limit.DIAL
                : dial.set(sensitivity.uncertainty()).limit();
        double sigmaHz = Math.hypot(width.sigmaHz(), marksHz);
        return new Figure(kind, dialHz, width.hz(), sigmaHz, limit, Figure.Outcome.MEASURED);
    }
}
