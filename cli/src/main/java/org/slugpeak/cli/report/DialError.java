package org.slugpeak.cli.report;

import java.util.Optional;
import org.slugpeak.core.session.Advice;

/**
 * Dial error at one frequency, before or after the work. Immutable; any thread may use it.
 *
 * @param hz true frequency, Hz
 * @param errorHz dial - true, Hz
 * @param after whether it was taken after the work
 */
public record DialError(double hz, double errorHz, boolean after) {

    static final String BEFORE = "dial-before";
    static final String AFTER = "dial-after";

    /** Empty where an advice carries none. */
    static Optional<DialError> of(Advice advice) {
        boolean after = advice.topic().equals(AFTER);
        return after || advice.topic().equals(BEFORE)
                ? Numbers.parsed(advice.text()).map(hz -> new DialError(hz, advice.amount(), after))
                : Optional.empty();
    }
}
