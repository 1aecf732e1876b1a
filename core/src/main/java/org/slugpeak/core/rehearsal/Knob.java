package org.slugpeak.core.rehearsal;

import java.util.function.DoubleUnaryOperator;

/** Something that is turned. One thread at a time. */
public final class Knob {

    private final String name;
    private final DoubleUnaryOperator law;
    private final double reachTurns;
    private final double widthTurns;
    private double turns;

    /**
     * At its working position.
     *
     * @param name as the plan has it
     * @param law what so many turns from the working position change, as a fraction or in farad
     * @param reachTurns how far it can be turned to either side of the working position
     * @param widthTurns over how many turns its circuit passes half the power
     */
    Knob(String name, DoubleUnaryOperator law, double reachTurns, double widthTurns) {
        this.name = name;
        this.law = law;
        this.reachTurns = reachTurns;
        this.widthTurns = widthTurns;
    }

    /**
     * As the plan has it.
     *
     * @return its name
     */
    public String name() {
        return name;
    }

    /**
     * Where it stands.
     *
     * @return turns from its working position
     */
    public double turns() {
        return turns;
    }

    /**
     * Turns it, as far as it goes.
     *
     * @param wantedTurns from its working position
     */
    public void turnTo(double wantedTurns) {
        turns = Math.max(-reachTurns, Math.min(reachTurns, wantedTurns));
    }

    /**
     * How far it can be turned to either side of its working position.
     *
     * @return turns; positive
     */
    public double reachTurns() {
        return reachTurns;
    }

    /**
     * Over how many turns its circuit passes half the power.
     *
     * @return turns; positive
     */
    public double widthTurns() {
        return widthTurns;
    }

    double effect() {
        return law.applyAsDouble(turns);
    }
}
