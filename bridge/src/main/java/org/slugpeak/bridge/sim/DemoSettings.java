package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.core.receiver.Fault;

/**
 * How a demonstration is played. Immutable; any thread may use it.
 *
 * @param seed of hand, noise and meter, any number: the same seed plays the same demonstration
 * @param turner who turns the slugs
 * @param fault what is wrong with set or bench; empty for nothing
 */
public record DemoSettings(long seed, Turner turner, Optional<Fault> fault) {

    /** Who turns the slugs. */
    public enum Turner {
        /** A simulated hand that obeys the records. */
        SIMULATED,
        /** The user, by keys. */
        KEYS
    }

    /**
     * A sound set and a simulated hand.
     *
     * @param seed of hand, noise and meter; any number
     * @return the usual settings
     */
    public static DemoSettings ofSeed(long seed) {
        return new DemoSettings(seed, Turner.SIMULATED, Optional.empty());
    }

    /**
     * The same with another turner.
     *
     * @param newTurner who turns
     * @return a copy
     */
    public DemoSettings withTurner(Turner newTurner) {
        return new DemoSettings(seed, newTurner, fault);
    }

    /**
     * The same with a fault.
     *
     * @param newFault what is wrong
     * @return a copy
     */
    public DemoSettings withFault(Fault newFault) {
        return new DemoSettings(seed, turner, Optional.of(newFault));
    }
}
