package org.slugpeak.core.plan;

import java.util.Optional;
import org.slugpeak.core.receiver.OscillatorSide;

/**
 * A tuning range; refused with an {@link IllegalArgumentException} unless its ends ascend. Immutable; any thread may use it.
 *
 * @param name as on the set, for example {@code MW}
 * @param lowHz lower end, Hz
 * @param highHz upper end, Hz
 * @param oscillator where the oscillator runs; empty where the plan does not say
 * @param tuning what moves when it is tuned
 */
public record Band(
        String name, double lowHz, double highHz, Optional<OscillatorSide> oscillator, TuningElement tuning) {

    public Band {
        if (!(0 < lowHz && lowHz < highHz)) {
            throw new IllegalArgumentException("the ends of band " + name + " must ascend");
        }
    }

    /**
     * A range tuned by a capacitor, of whose oscillator nothing is said.
     *
     * @param name as on the set
     * @param lowHz lower end, Hz
     * @param highHz upper end, Hz
     */
    public Band(String name, double lowHz, double highHz) {
        this(name, lowHz, highHz, Optional.empty(), TuningElement.CAPACITOR);
    }

    /**
     * Whether its dial shows a frequency.
     *
     * @param hz Hz
     * @return true from one end to the other
     */
    public boolean covers(double hz) {
        return lowHz <= hz && hz <= highHz;
    }
}
