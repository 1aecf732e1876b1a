package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.LevelWatch;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.session.Advice;

/**
 * What stands on the screen until it is answered: a fault that is suspected, or a peak that came out too wide. Immutable; any
 * thread may use it.
 *
 * @param topic of the advice that warns
 * @param text one line
 */
record Warning(String topic, String text) {

    private static final String LEVEL_CHECKED = "level-check";

    /** What stands after an advice, given what stood before it. */
    static Optional<Warning> after(Optional<Warning> before, Advice advice) {
        if (Suspicion.isTopic(advice.topic()) || advice.topic().equals(LevelWatch.WIDE_PEAK)) {
            return Optional.of(new Warning(advice.topic(), advice.text()));
        }
        if (advice.topic().equals(Suspicion.CLEARED)) {
            return Optional.empty();
        }
        return advice.topic().equals(LEVEL_CHECKED) ? before.filter(it -> !it.isOfOnePeak()) : before;
    }

    /** What stands after a command of the user. */
    static Optional<Warning> after(Optional<Warning> before, LevelCommand command) {
        return command.verb() == LevelCommand.Verb.REPAIRED ? Optional.empty() : before;
    }

    /** Whether it says nothing of the next adjuster. */
    boolean isOfOnePeak() {
        return topic.equals(LevelWatch.WIDE_PEAK);
    }
}
