package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.ToDo;

/** The obvious next thing, for whoever has one pedal and no eyes to spare. Stateless. */
public final class Obvious {

    private Obvious() {}

    /**
     * What is done with a moment by nearly everybody.
     *
     * @param moment as it is
     * @return done, or next; empty where nothing is obvious, and nothing is to happen then
     */
    public static Optional<KeyAction> next(Moment moment) {
        Act act = moment.act();
        if (act == Act.DO) {
            return moment.toDo().flatMap(toDo -> answer(toDo.stays()));
        }
        return act == Act.HELD || act == Act.STOP ? Optional.of(KeyAction.NEXT) : Optional.empty();
    }

    private static Optional<KeyAction> answer(ToDo.Stays stays) {
        return switch (stays) {
            case UNTIL_ANSWERED -> Optional.of(KeyAction.DONE);
            case UNTIL_SET_UP, UNTIL_TAKEN -> Optional.of(KeyAction.NEXT);
            case FOR_A_WHILE, UNTIL_TURNED, UNTIL_LET_GO, WHILE_SET, UNTIL_STANDS -> Optional.empty();
        };
    }
}
