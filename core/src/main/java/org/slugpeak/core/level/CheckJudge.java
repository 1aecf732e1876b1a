package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.StepCheck.Level;

/** What the levels of a check mean. The limits are common practice, no source, except where a formula is named. */
final class CheckJudge {

    private static final double HUM_SHARE = 0.03;
    private static final double SERIES_OHM = 1e6;
    private static final double GOOD_METER_OHM = 5e6;
    private static final double NO_EFFECT_DB = 0.2;
    private static final double NARROW_SKIRT_DB = 13;
    private static final double HARMONIC_DROP_DB = 3;
    private static final double NO_IMAGE_DB = 36;

    private final LevelListener listener;
    private final Standing standing;

    CheckJudge(LevelListener listener, Standing standing) {
        this.listener = listener;
        this.standing = standing;
    }

    /** How far a reading can be believed after the check of the level. */
    enum Following {
        GOOD,
        DOUBTFUL,
        REFUSED
    }

    Following level(long tNanos, Halvings halvings) {
        double slope = halvings.slope();
        if (halvings.isCompressed()) {
            listener.flattening(tNanos, slope);
            boolean limited = CheckFigures.isLimited(slope);
            standing.raise(tNanos, limited ? Suspicion.LIMITER : Suspicion.TOO_STRONG, slope);
            return slope < CheckFigures.REFUSE_SLOPE ? Following.REFUSED : Following.DOUBTFUL;
        }
        follows(tNanos);
        found(tNanos, CheckKind.LEVEL, CheckFigures.of(slope));
        return Following.GOOD;
    }

    /** Whatever held the reading does so no longer. */
    void follows(long tNanos) {
        standing.clear(tNanos, Suspicion.TOO_STRONG);
        standing.clear(tNanos, Suspicion.LIMITER);
    }

    /** A halving was asked for, and nothing changed: either it was not made, or it does not show. */
    void unmoved(long tNanos) {
        standing.raise(tNanos, Suspicion.LIMITER, Double.NaN);
    }

    /** What a weak signal was before does not count: {@code usualVolts} is what the point has at the least where it is worked at. */
    void rest(long tNanos, Level before, Level rest, double usualVolts) {
        found(tNanos, CheckKind.REST, CheckFigures.of(rest.value()));
        double signalVolts = Math.max(usualVolts, Math.abs(before.value() - rest.value()));
        boolean hums = rest.scatter() > HUM_SHARE * signalVolts;
        decide(tNanos, hums, Suspicion.HUM, rest.scatter());
    }

    /** A meter of R ohm behind a source of Rs reads r = (R + Rs)/(R + Rs + 1 Mohm) of before; Ohm's law. */
    void loading(long tNanos, double before, double after) {
        double share = Math.min(0.999, after / before);
        double ohm = SERIES_OHM * share / (1 - share);
        found(tNanos, CheckKind.LOADING, CheckFigures.of(ohm));
        decide(tNanos, ohm < GOOD_METER_OHM, Suspicion.LOADING, ohm);
    }

    void effect(long tNanos, double before, double after, Suspicion ifNone) {
        double change = db(after / before);
        found(tNanos, CheckKind.EFFECT, CheckFigures.of(change));
        decide(tNanos, Math.abs(change) < NO_EFFECT_DB, ifNone, change);
    }

    void skirts(long tNanos, double skirtHz, double centre, double above, double below) {
        double up = db(centre / above);
        double down = db(centre / below);
        found(tNanos, CheckKind.SKIRTS, new CheckFigures(up - down, up, down, skirtHz));
        double mean = (up + down) / 2;
        // How steep a strip may be is known at the usual distance only.
        if (skirtHz == CheckFigures.USUAL_SKIRT_HZ) {
            decide(tNanos, mean > NARROW_SKIRT_DB, Suspicion.REGENERATION, mean);
        }
    }

    /** Centre of the three powers at -10, 0 and +10 kHz. */
    void otherIf(long tNanos, double centre, double below, double above) {
        double lower = below * below;
        double upper = above * above;
        double offsetKilohertz = 10 * (upper - lower) / (upper + lower + centre * centre);
        found(tNanos, CheckKind.OTHER_IF, CheckFigures.of(offsetKilohertz));
        decide(tNanos, Math.abs(offsetKilohertz) > 5, Suspicion.WRONG_IF, offsetKilohertz);
    }

    /** The mean of both sides: what a set that is not quite on tune loses on one side it gains on the other. */
    void harmonic(long tNanos, double centre, double above, double below) {
        double up = db(centre / above);
        double down = db(centre / below);
        double drop = (up + down) / 2;
        found(tNanos, CheckKind.HARMONIC, new CheckFigures(drop, up, down));
        decide(tNanos, drop > HARMONIC_DROP_DB, Suspicion.HARMONIC, drop);
    }

    void image(long tNanos, double before, double after) {
        double drop = db(before / after);
        decide(tNanos, drop > NO_IMAGE_DB, Suspicion.IMAGE, drop);
        if (drop <= NO_IMAGE_DB) {
            found(tNanos, CheckKind.IMAGE, CheckFigures.of(drop));
        }
    }

    /** The law is told where each step was followed; the figure is decibels of the reading over decibels of the generator. */
    Optional<DetectorLaw> law(long tNanos, List<Double> levels) {
        List<DetectorLaw.Step> steps = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            steps.add(new DetectorLaw.Step(-i * CheckKind.LAW_STEP_DB, levels.get(i)));
        }
        Optional<DetectorLaw> law = DetectorLaw.of(steps);
        if (law.isPresent()) {
            steps.forEach(step -> listener.lawStep(tNanos, step.generatorDb(), step.level()));
        }
        int last = levels.size() - 1;
        double slope = db(levels.get(last) / levels.get(0)) / steps.get(last).generatorDb();
        found(tNanos, CheckKind.DETECTOR_LAW, CheckFigures.of(law.isPresent() ? slope : Double.NaN));
        return law;
    }

    private void found(long tNanos, CheckKind check, CheckFigures figures) {
        listener.checked(tNanos, check, figures);
    }

    private void decide(long tNanos, boolean bad, Suspicion suspicion, double amount) {
        if (bad) {
            standing.raise(tNanos, suspicion, amount);
        } else {
            standing.clear(tNanos, suspicion);
        }
    }

    static double db(double ratio) {
        return Decibels.of(Math.max(1e-6, ratio));
    }
}
