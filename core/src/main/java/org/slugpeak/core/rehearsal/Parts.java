package org.slugpeak.core.rehearsal;

import org.slugpeak.core.receiver.SlugLaw;
import org.slugpeak.core.receiver.Trimmer;

/** How the parts that are turned behave. All figures are of usual size and made up where nothing else is said. */
final class Parts {

    /** Iron in a coil near its working position: the 2 percent of inductance a turn of the reference tables. */
    private static final double COIL_PER_TURN = 0.02;

    private static final double PADDER_PER_TURN = 0.05;

    /** Of the table of trimmers of the reference data, from memory. */
    private static final Trimmer TRIMMER = new Trimmer(3e-12, 30e-12, 3);

    private static final Trimmer VHF_TRIMMER = new Trimmer(3e-12, 12e-12, 2);

    /** Above this a range counts as very high frequency. */
    static final double VHF_HZ = 30e6;

    /** The law of the slugs of the demonstration set: about 3 percent of inductance a turn. */
    private static final SlugLaw IF_SLUG = new SlugLaw(8.33, 0.176, 0.67);

    private static final double IF_SLUG_PER_TURN = 0.031;

    /** Far from the second place where such a slug has the same inductance. */
    private static final double IF_REACH_TURNS = 2;

    /** A vernier of a service generator near 455 kHz, Hz a turn; made up. */
    private static final double GENERATOR_HZ_PER_TURN = 2e3;

    /** Iron far from a coil, for a fine adjustment: the 1 percent of inductance a turn of the reference tables. */
    private static final double FINE_COIL_PER_TURN = 0.01;

    private Parts() {}

    /** The generator, near a crystal. */
    static Knob generator(String name) {
        return new Knob(
                name, turns -> turns * GENERATOR_HZ_PER_TURN, 1, CrystalFilter.loopWidthHz() / GENERATOR_HZ_PER_TURN);
    }

    /** The coil that tunes the load of a crystal. */
    static Knob crystalLoad(String name) {
        double width = 2 / CrystalFilter.LOAD_Q;
        return tuning(name, COIL_PER_TURN, COIL_PER_TURN / 2, width, width);
    }

    /** The coil of an oscillator whose signal passes over a fraction of its frequency. */
    static Knob oscillatorCoil(String name, double width) {
        return tuning(name, COIL_PER_TURN, COIL_PER_TURN / 2, 2 * width, width);
    }

    /** The coil of a beat oscillator, whose note falls to nothing over a fraction of its frequency. */
    static Knob pitch(String name, double width) {
        return tuning(name, FINE_COIL_PER_TURN, FINE_COIL_PER_TURN / 2, FINE_COIL_PER_TURN / 2, width);
    }

    /** A slug of an IF transformer; the reference tables have half power 2/Q of inductance to either side. */
    static Knob ifSlug(String name, double q) {
        return new Knob(name, IF_SLUG::inductanceChange, IF_REACH_TURNS, 4 / q / IF_SLUG_PER_TURN);
    }

    /** A slug that is set to a zero, which is passed over a tenth of the way from one peak to the other. */
    static Knob zeroSlug(String name, double q) {
        return new Knob(name, IF_SLUG::inductanceChange, IF_REACH_TURNS, 0.4 / q / IF_SLUG_PER_TURN);
    }

    /** The core of a trap, which is deep over less than half the width of its circuit. */
    static Knob core(String name, double q) {
        return new Knob(name, turns -> turns * COIL_PER_TURN, 3, 0.4 / q / (COIL_PER_TURN / 2));
    }

    /** What a turn of it is worth: farad of a trimmer, a fraction of a padder or coil. */
    static double worth(PartKind kind, double topHz) {
        return switch (kind) {
            case TRIMMER -> trimmer(topHz).changeFarad(0.5) - trimmer(topHz).changeFarad(-0.5);
            case PADDER -> PADDER_PER_TURN;
            case COIL -> COIL_PER_TURN;
        };
    }

    private static Trimmer trimmer(double topHz) {
        return topHz > VHF_HZ ? VHF_TRIMMER : TRIMMER;
    }

    /**
     * A trimmer of a tuned circuit, in its working position at the middle of its way.
     *
     * @param topHz end of its range
     * @param perTurn by what fraction a turn moves the frequency where it is adjusted
     * @param reach by what fraction of the frequency it can be turned off, to either side, as far as it goes
     * @param width by what fraction of the frequency half the power is lost
     */
    static Knob trimmer(String name, double topHz, double perTurn, double reach, double width) {
        Trimmer trimmer = trimmer(topHz);
        double turns = Math.min(trimmer.turns() / 2, reach / perTurn);
        return new Knob(name, trimmer::changeFarad, turns, width / perTurn);
    }

    /**
     * A part of a tuned circuit.
     *
     * @param worth of a turn
     * @param perTurn by what fraction a turn moves the frequency where it is adjusted
     * @param reach by what fraction of the frequency it can be turned off, to either side
     * @param width by what fraction of the frequency half the power is lost
     */
    static Knob tuning(String name, double worth, double perTurn, double reach, double width) {
        return new Knob(name, turns -> turns * worth, reach / perTurn, width / perTurn);
    }
}
