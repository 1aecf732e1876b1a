package org.slugpeak.bridge.sim;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.rehearsal.PlannedScene;
import org.slugpeak.core.session.Work;

/**
 * Follows where in its plan a session is: a set-up alone does not tell, as two steps may want the same. One thread at a time.
 */
final class PlaceInPlan {

    private final List<PlannedScene> scenes;
    private int here;

    PlaceInPlan(List<PlannedScene> scenes) {
        this.scenes = scenes;
    }

    /** The scene for a set-up: the one that is due if it wants it, else the first that does. */
    Optional<PlannedScene> due(Setup setup) {
        Optional<PlannedScene> next = Optional.of(scenes.get(here)).filter(it -> wants(it, setup));
        return next.or(() -> scenes.stream().filter(it -> wants(it, setup)).findFirst());
    }

    private static boolean wants(PlannedScene scene, Setup setup) {
        return scene.step().setup().equals(setup);
    }

    /** How far below the pointer the image of the present signal is met; negative where the oscillator runs below it. */
    double imageHz() {
        PlannedScene scene = scenes.get(here);
        return 2 * scene.side().sign() * scene.intermediateHz();
    }

    /** The scene of a step that is begun. */
    Optional<PlannedScene> at(PlanStep step) {
        for (int i = 0; i < scenes.size(); i++) {
            int from = (here + i) % scenes.size();
            if (scenes.get(from).step().equals(step)) {
                here = from;
                return Optional.of(scenes.get(from));
            }
        }
        return Optional.empty();
    }

    /** An adjuster has ended. */
    void next() {
        here = Math.min(here + 1, scenes.size() - 1);
    }

    /** A round has ended: the stage begins again, or the next one does. */
    void roundEnded(Work.RoundEnded it) {
        for (int i = 0; it.verdict().goesOn() && i < scenes.size(); i++) {
            if (scenes.get(i).stage().name().equals(it.stage())) {
                here = i;
                return;
            }
        }
    }
}
