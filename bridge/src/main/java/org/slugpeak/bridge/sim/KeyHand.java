package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.core.receiver.Backlash;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;

/** The user's own hand: keys turn the tool, and the slug follows when the play is taken up. One thread at a time. */
final class KeyHand implements AdjusterChore.Turner {

    private static final double BACKLASH_DEGREES = 6;

    private final SimulatedReceiver receiver;
    private Part part = Part.T2_TOP;
    private Backlash slug = new Backlash(0, 0);
    private boolean finished = true;

    KeyHand(SimulatedReceiver receiver) {
        this.receiver = receiver;
    }

    @Override
    public void begin(Part newPart, Bench bench) {
        part = newPart;
        slug = new Backlash(BACKLASH_DEGREES, receiver.turns(newPart) * 360);
        finished = false;
    }

    /** Turns the tool; positive is inwards. */
    void turn(double degrees) {
        if (!finished) {
            slug.move(degrees);
            receiver.set(part, slug.position() / 360);
        }
    }

    /** Takes the tool out: the adjuster is done. */
    void next() {
        finished = true;
        receiver.hand(Optional.empty());
    }

    @Override
    public boolean isFinished() {
        return finished;
    }
}
