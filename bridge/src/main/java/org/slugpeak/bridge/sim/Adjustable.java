package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.rehearsal.Knob;

/** Something that a hand turns. One thread at a time. */
interface Adjustable {

    /** Where it stands, in turns from its working position. */
    double turns();

    void turnTo(double turns);

    /** Puts a tool in, or takes it out. */
    void touch(boolean tool);

    /** How far it goes to either side of its working position; infinite where no stop is known. */
    double reachTurns();

    /** Over how many turns its circuit passes half the power, which a hand soon knows; infinite for nothing touchy. */
    double widthTurns();

    /** Which way to begin, where something else than the reading tells; 0 where nothing does. */
    default int towards() {
        return 0;
    }

    /** A part of the demonstration set. */
    static Adjustable of(SimulatedReceiver receiver, Part part) {
        return new Adjustable() {
            @Override
            public double turns() {
                return receiver.turns(part);
            }

            @Override
            public void turnTo(double turns) {
                receiver.set(part, turns);
            }

            @Override
            public void touch(boolean tool) {
                receiver.hand(tool ? Optional.of(part) : Optional.empty());
            }

            @Override
            public double reachTurns() {
                return Double.POSITIVE_INFINITY;
            }

            @Override
            public double widthTurns() {
                return Double.POSITIVE_INFINITY;
            }
        };
    }

    /** An adjuster of a set that was made up from a plan. */
    static Adjustable of(Knob knob) {
        return new OnKnob(knob, 0);
    }

    /** A beat oscillator: its note is heard to fall one way and to rise the other. */
    static Adjustable heard(Knob knob) {
        return new OnKnob(knob, knob.turns() > 0 ? -1 : 1);
    }

    /** A knob under a hand. */
    record OnKnob(Knob knob, int towards) implements Adjustable {

        @Override
        public double turns() {
            return knob.turns();
        }

        @Override
        public void turnTo(double turns) {
            knob.turnTo(turns);
        }

        @Override
        public void touch(boolean tool) {}

        @Override
        public double reachTurns() {
            return knob.reachTurns();
        }

        @Override
        public double widthTurns() {
            return knob.widthTurns();
        }
    }
}
