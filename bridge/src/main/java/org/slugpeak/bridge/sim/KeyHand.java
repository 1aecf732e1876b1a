package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.core.receiver.Backlash;

/** The user's own hand: keys turn the tool, and the slug follows when the play is taken up. One thread at a time. */
final class KeyHand implements AdjusterChore.Turner {

    private static final double BACKLASH_DEGREES = 6;

    private Optional<Adjustable> part = Optional.empty();
    private Backlash slug = new Backlash(0, 0);
    private boolean finished = true;

    @Override
    public void begin(Adjustable newPart, Bench bench) {
        part = Optional.of(newPart);
        slug = new Backlash(BACKLASH_DEGREES, newPart.turns() * 360);
        finished = false;
    }

    /** Turns the tool; positive is inwards. */
    void turn(double degrees) {
        if (!finished) {
            slug.move(degrees);
            part.ifPresent(it -> it.turnTo(slug.position() / 360));
        }
    }

    /** Takes the tool out: the adjuster is done. */
    void next() {
        finished = true;
        part.ifPresent(it -> it.touch(false));
    }

    @Override
    public void afterHeld() {
        next();
    }

    @Override
    public boolean isFinished() {
        return finished;
    }
}
