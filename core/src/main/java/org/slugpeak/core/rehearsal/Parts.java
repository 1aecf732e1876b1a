package org.slugpeak.core.rehearsal;

import org.slugpeak.core.receiver.SlugLaw;

/** How the parts that are turned behave. All figures are of usual size and made up where nothing else is said. */
final class Parts {

    /** Iron in a coil near its working position: the 2 percent of inductance a turn of the reference tables. */
    private static final double COIL_PER_TURN = 0.02;

    private static final double PADDER_PER_TURN = 0.05;

    /** 3 to 30 pF in three turns, from memory. */
    private static final double TRIMMER_FARAD_PER_TURN = 9e-12;

    /** 3 to 12 pF in two turns, from memory. */
    private static final double VHF_TRIMMER_FARAD_PER_TURN = 4.5e-12;

    /** Above this a range counts as very high frequency. */
    static final double VHF_HZ = 30e6;

    /** The law of the slugs of the demonstration set: about 3 percent of inductance a turn. */
    private static final SlugLaw IF_SLUG = new SlugLaw(8.33, 0.176, 0.67);

    private static final double IF_SLUG_PER_TURN = 0.031;

    /** Far from the second place where such a slug has the same inductance. */
    private static final double IF_REACH_TURNS = 2;

    private Parts() {}

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
            case TRIMMER -> topHz > VHF_HZ ? VHF_TRIMMER_FARAD_PER_TURN : TRIMMER_FARAD_PER_TURN;
            case PADDER -> PADDER_PER_TURN;
            case COIL -> COIL_PER_TURN;
        };
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
