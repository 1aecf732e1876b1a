package org.slugpeak.bridge.generator;

import java.util.List;
import java.util.Optional;

/**
 * How something is switched on and off. Immutable.
 *
 * @param on sent in this order
 * @param off sent in this order
 * @param readBack asks how it stands; empty where the generator cannot tell
 */
record SwitchLines(List<String> on, List<String> off, Optional<Question> readBack) {

    SwitchLines {
        on = List.copyOf(on);
        off = List.copyOf(off);
    }

    /** A question with the answers that there are to it. */
    record Question(String ask, AnswerForm isOn, AnswerForm isOff) {

        Optional<Boolean> read(String answer) {
            if (isOn.fits(answer)) {
                return Optional.of(true);
            }
            return isOff.fits(answer) ? Optional.of(false) : Optional.empty();
        }
    }

    List<String> lines(boolean wantedOn) {
        return wantedOn ? on : off;
    }
}
