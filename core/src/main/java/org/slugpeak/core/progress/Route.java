package org.slugpeak.core.progress;

import java.util.Optional;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.plan.Stage;

/** Knows where in the plan the work is, what the present round has gained, and where it goes on. One thread at a time. */
final class Route {

    /** From the third round on a round should gain far less than the one before; half of it means creeping. */
    private static final double CREEPING = 0.5;

    private static final int FIRST_TELLING_ROUND = 3;

    private final Plan plan;
    private Position here = Position.START;
    private double roundGainDb;
    private double roundChangeDb;
    private double lastRoundGainDb;
    private boolean unsettled;
    private boolean over;

    /** How a round ended; the gain is NaN where it does not add up; {@code wantsSkirts}: the stage is over with it, and is judged by its skirts too. */
    record RoundEnd(String stage, int round, double gainDb, RoundVerdict verdict, boolean wantsSkirts) {}

    Route(Plan plan) {
        this.plan = plan;
    }

    boolean isOver() {
        return over;
    }

    Position here() {
        return here;
    }

    Stage stage() {
        return plan.stages().get(here.stage());
    }

    PlanStep step() {
        return stage().steps().get(here.step());
    }

    /** What the present step gained in all is not known: the round does not count as the last one. */
    void unsettled() {
        unsettled = true;
    }

    /** Goes on after a step; the end of a round is told. */
    Optional<RoundEnd> advance(double gainDb) {
        if (!Double.isNaN(gainDb)) {
            roundGainDb += gainDb;
            roundChangeDb += Math.abs(gainDb);
        }
        if (unsettled) {
            roundChangeDb += stage().repeat().belowDb();
            unsettled = false;
        }
        if (here.step() + 1 < stage().steps().size()) {
            here = new Position(here.stage(), here.round(), here.step() + 1);
            return Optional.empty();
        }
        RoundEnd end = roundEnd(verdict());
        lastRoundGainDb = roundGainDb;
        roundGainDb = 0;
        roundChangeDb = 0;
        if (end.verdict().goesOn()) {
            here = new Position(here.stage(), here.round() + 1, 0);
        } else if (here.stage() + 1 < plan.stages().size()) {
            here = new Position(here.stage() + 1, 1, 0);
        } else {
            over = true;
        }
        return Optional.of(end);
    }

    private RoundEnd roundEnd(RoundVerdict verdict) {
        boolean skirts = stage().steps().stream().anyMatch(each -> each.acceptance() == Acceptance.SKIRTS);
        double gainDb = stage().addsUp() ? roundGainDb : Double.NaN;
        return new RoundEnd(stage().name(), here.round(), gainDb, verdict, skirts && !verdict.goesOn());
    }

    private RoundVerdict verdict() {
        RepeatRule rule = stage().repeat();
        // What one adjuster lost does not make up for what another gained: both say that it is not over.
        if (rule.isOnce() || roundChangeDb < rule.belowDb()) {
            return RoundVerdict.CONVERGED;
        }
        if (here.round() >= rule.mostRounds()) {
            return RoundVerdict.STILL_GAINING;
        }
        boolean creeps = here.round() >= FIRST_TELLING_ROUND && roundGainDb > CREEPING * lastRoundGainDb;
        return creeps ? RoundVerdict.CREEPING : RoundVerdict.AGAIN;
    }

    /** One step back, within the round or into the stage before; at the very beginning it stays. */
    void back() {
        unsettled = false;
        if (here.step() > 0) {
            here = new Position(here.stage(), here.round(), here.step() - 1);
        } else if (here.round() > 1) {
            here = new Position(here.stage(), here.round() - 1, stage().steps().size() - 1);
        } else if (here.stage() > 0) {
            Stage before = plan.stages().get(here.stage() - 1);
            here = new Position(here.stage() - 1, 1, before.steps().size() - 1);
        }
    }
}
