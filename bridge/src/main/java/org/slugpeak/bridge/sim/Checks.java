package org.slugpeak.bridge.sim;

import java.util.Optional;
import java.util.function.Supplier;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.word.Coded;

/** Makes the moves of the checks that the session starts. One thread at a time. */
final class Checks {

    private Optional<CheckChore> present = Optional.empty();

    /**
     * Hears a record; what is turned where a check asks for it is the adjuster at hand, and an image is looked for so far below the
     * pointer.
     */
    void hear(SessionRecord record, Supplier<Adjustable> atHand, double imageHz, Bench bench) {
        present.ifPresent(it -> it.hear(record, bench));
        if (record instanceof Said.Command given && given.instruction() instanceof Instruction.Level level) {
            commanded(level.command(), atHand, imageHz, bench);
        }
    }

    private void commanded(LevelCommand command, Supplier<Adjustable> atHand, double imageHz, Bench bench) {
        if (command.verb() == LevelCommand.Verb.CHECK) {
            CheckKind kind = Coded.find(CheckKind.class, command.detail()).orElseThrow();
            CheckChore asked = new CheckChore(kind, atHand.get(), imageHz);
            asked.remember(bench);
            present = Optional.of(asked);
        }
    }

    void step(Bench bench, SourceListener listener) {
        if (present.isPresent() && present.get().step(bench, listener)) {
            present = Optional.empty();
        }
    }
}
