package org.slugpeak.core.progress;

import java.util.HashSet;
import java.util.Set;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.session.Adjuster;

/**
 * Notices readings that look like an over-coupled transformer.
 *
 * <p>With the detunings a and b of its circuits in half bandwidths, a pair gives {@code 1/|(1+ja)(1+jb)+c|} where c is the square
 * of the coupling in units of the critical one (F. E. Terman, Radio Engineers' Handbook, 1943, section 3, with the factor
 * dropped that nothing depends on). Peaking the one while the other stays puts it at {@code a = c b/(1+b^2)}, which is at most
 * {@code c/2}. So where c is not above 1 a single round leaves no more than 0.103 dB a pair, from any start, and that at c = 0.67,
 * which is 0.82 of the critical coupling: the next round cannot gain much. Above 1 the centre repels, and a later round may gain decibels on the way to a hump. A slug that was left in
 * the wrong place in the first round brings such a gain too, so both causes are named. Whoever stands on a hump already after the
 * first round gains nothing more: that shows in the skirts alone.
 *
 * <p>One thread at a time.
 */
final class CouplingWatch {

    /**
     * No adjuster of a pair that is not over-coupled gains so much once all have been at their best, dB: 0.103 by the coupling, and
     * up to 0.2 each that this one and its partner were left below their best.
     */
    private static final double CANNOT_GAIN_DB = 0.51;

    private final Set<String> settled = new HashSet<>();
    private String stageName = "";
    private boolean said;

    /**
     * An adjuster has been left.
     *
     * @return whether it looks like it; true once a stage
     */
    boolean ended(Stage stage, PlanStep step, int round, Adjuster.Action action, double gainDb) {
        if (!stage.name().equals(stageName)) {
            stageName = stage.name();
            settled.clear();
            said = false;
        }
        boolean all = stage.steps().stream().allMatch(each -> settled.contains(each.adjuster()));
        boolean tells = !said && all && round > 1 && gainDb > CANNOT_GAIN_DB && isAboutCoupling(stage);
        if (action == Adjuster.Action.DONE) {
            settled.add(step.adjuster());
        } else {
            settled.remove(step.adjuster());
        }
        said = said || tells;
        return tells;
    }

    /** Maxima at one frequency without damping: elsewhere adjusters work upon each other for other reasons. */
    private static boolean isAboutCoupling(Stage stage) {
        Setup first = stage.steps().get(0).setup();
        return stage.steps().size() > 1
                && stage.steps().stream()
                        .allMatch(step -> step.goal().isOfCoupledPair()
                                && step.damping().isEmpty()
                                && step.setup().equals(first));
    }
}
