package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.display.DisplayOptions;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;

/** What is pressed at a terminal or on the page, and what comes of it: only what the keys page tells of. */
class UsefulKeysTest {

    private final List<String> done = new ArrayList<>();

    private final SessionControl control = new SessionControl() {
        @Override
        public void note(String text) {
            done.add("note");
        }

        @Override
        public void command(Instruction instruction) {
            done.add(((Instruction.Level) instruction).command().verb() + " "
                    + ((Instruction.Level) instruction).command().detail());
        }

        @Override
        public void nextAdjuster() {
            done.add("next");
        }

        @Override
        public void sameAdjuster() {
            done.add("again");
        }

        @Override
        public void previousAdjuster() {
            done.add("previous");
        }

        @Override
        public void skipAdjuster() {
            done.add("skip");
        }

        @Override
        public void quit(EndReason reason) {
            done.add("quit");
        }
    };

    private List<String> press(Set<KeyAction> useful, Iterable<KeyAction> pressed) {
        Showing showing = new DisplayOptions().open(System.err, System.err, true, useful);
        pressed.forEach(showing.keys()::put);
        new ShowingOutput(showing, useful).serve(control);
        return done;
    }

    @Test
    void aKeyThatIsNotOfUseChangesNothing() {
        assertEquals(
                List.of("next"),
                press(
                        Set.of(KeyAction.NEXT),
                        EnumSet.complementOf(EnumSet.of(KeyAction.QUIT, KeyAction.INTERRUPT, KeyAction.HANG_UP))));
    }

    @Test
    void theLevelKeysCommandTheirChecksInTurn() {
        List<KeyAction> pressed = List.of(
                KeyAction.REST,
                KeyAction.LEVEL,
                KeyAction.CHECK,
                KeyAction.CHECK,
                KeyAction.DONE,
                KeyAction.DROP,
                KeyAction.REPAIRED);
        assertEquals(
                List.of("CHECK rest", "CHECK level", "CHECK loading", "CHECK effect", "DONE ", "CANCEL ", "REPAIRED "),
                press(ShowingOutput.LEVEL_KEYS, pressed));
    }

    @Test
    void theObviousKeyDoesNothingWhereNothingIsAsked() {
        assertEquals(List.of(), press(ShowingOutput.USUAL_KEYS, List.of(KeyAction.GO)));
    }
}
