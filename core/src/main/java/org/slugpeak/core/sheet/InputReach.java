package org.slugpeak.core.sheet;

import java.util.Optional;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.ScaleEstimate;

/**
 * What the generator of a sheet can give. Immutable; any thread may use it.
 *
 * @param leastEmfVolts least level, volts EMF
 * @param mostEmfVolts greatest level, volts EMF
 * @param obeys whether it is set by the tool, and says when it stands
 * @param dial how its dial errs where a hand sets it; empty where nobody knows
 */
public record InputReach(double leastEmfVolts, double mostEmfVolts, boolean obeys, Optional<DialScale> dial) {

    /** Of a service generator that a hand sets: a tenth of a microvolt to 0.1 V (common practice, no source). */
    public static final InputReach BY_HAND = new InputReach(1e-7, 0.1, false, Optional.empty());

    /**
     * A generator that is set by the tool.
     *
     * @param leastEmfVolts least level, volts EMF
     * @param mostEmfVolts greatest level, volts EMF
     */
    public static InputReach obeying(double leastEmfVolts, double mostEmfVolts) {
        return new InputReach(leastEmfVolts, mostEmfVolts, true, Optional.empty());
    }

    /**
     * The same generator, whose dial a hand sets.
     *
     * @param scale how the dial errs; empty where nobody knows
     * @return a copy
     */
    public InputReach marked(Optional<DialScale> scale) {
        return new InputReach(leastEmfVolts, mostEmfVolts, obeys, scale);
    }

    /**
     * Where a hand has to set the dial.
     *
     * @param hz what the generator is to give, Hz
     * @return empty where nobody knows how the dial errs there
     */
    Optional<ScaleEstimate> mark(double hz) {
        return dial.flatMap(scale -> scale.dialFor(hz));
    }
}
