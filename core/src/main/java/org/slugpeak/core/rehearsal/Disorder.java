package org.slugpeak.core.rehearsal;

import java.util.List;
import java.util.SplittableRandom;

/** Puts a set out of alignment, as somebody with a screwdriver has. Figures are made up. One thread at a time. */
final class Disorder {

    /** Of what a part reaches to either side, so much at the least and at the most. */
    private static final double LEAST = 0.1;

    private static final double MOST = 0.5;

    private final SplittableRandom random;

    Disorder(SplittableRandom random) {
        this.random = random;
    }

    void of(Circuits circuits, List<PlannedScene> scenes) {
        for (Knob knob : circuits.knobs().values()) {
            double part = random.nextDouble(LEAST, MOST);
            knob.turnTo((random.nextBoolean() ? 1 : -1) * part * knob.reachTurns());
        }
    }
}
