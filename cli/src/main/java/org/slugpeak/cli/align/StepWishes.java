package org.slugpeak.cli.align;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Stage;

/**
 * What the steps of a plan want of the level watch: at which point the meter is and in which
 * window its reading stays, how far away skirts are compared, and whether it
 * is proved that the signal is met and not its image. It says a thing only when it changes. One thread at a time.
 */
final class StepWishes {

    private Optional<MeterPoint> point = Optional.empty();
    private double highVolts = Double.POSITIVE_INFINITY;
    private double skirtHz = CheckFigures.USUAL_SKIRT_HZ;
    private double imageDialHz = Double.NaN;
    private Optional<Stage> stage = Optional.empty();
    private Optional<PlanStep> step = Optional.empty();

    /** Before an adjuster is begun. */
    List<LevelCommand> before(Stage newStage, PlanStep newStep) {
        stage = Optional.of(newStage);
        step = Optional.of(newStep);
        List<LevelCommand> commands = new ArrayList<>();
        Optional<MeterPoint> named = newStep.setup().particulars().point();
        if (named.isPresent() && !named.equals(point)) {
            point = named;
            highVolts = named.get().highVolts();
            commands.add(LevelCommand.at(named.get()));
        }
        double wantedVolts = newStep.setup().highVolts();
        if (wantedVolts != highVolts) {
            highVolts = wantedVolts;
            commands.add(LevelCommand.below(wantedVolts));
        }
        return commands;
    }

    /** A check that the plan wants at the end of the stage that was begun last, and what it needs to know. */
    List<LevelCommand> forCheck(LevelCommand check) {
        List<LevelCommand> commands = new ArrayList<>();
        double wantedHz = stage.map(it -> it.response().skirtHz().orElse(CheckFigures.USUAL_SKIRT_HZ))
                .orElse(skirtHz);
        if (check.equals(LevelCommand.check(CheckKind.SKIRTS)) && wantedHz != skirtHz) {
            skirtHz = wantedHz;
            commands.add(LevelCommand.skirtsAt(wantedHz));
        }
        commands.add(check);
        return commands;
    }

    /** What is to be checked before the adjuster that was begun last counts as done, and what that needs to know. */
    List<LevelCommand> proofs() {
        if (step.isEmpty() || !step.get().provesImage()) {
            return List.of();
        }
        imageDialHz = step.get().imageDialHz().orElse(Double.NaN);
        LevelCommand check = LevelCommand.check(CheckKind.IMAGE);
        return Double.isNaN(imageDialHz) ? List.of(check) : List.of(LevelCommand.imageAt(imageDialHz), check);
    }

    /** Where on the dial the next check of the image looks, Hz; NaN where nobody knows. */
    double imageDialHz() {
        return imageDialHz;
    }

    /** How far to either side the next check of skirts looks, Hz. */
    double skirtHz() {
        return skirtHz;
    }
}
