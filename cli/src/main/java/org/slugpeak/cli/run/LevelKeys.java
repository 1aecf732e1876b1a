package org.slugpeak.cli.run;

import java.util.List;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;

/** What the level keys command. The checks that are made seldom share one key, which goes from each to the next. One thread. */
final class LevelKeys {

    private static final List<CheckKind> SELDOM = List.of(
            CheckKind.LOADING,
            CheckKind.EFFECT,
            CheckKind.SKIRTS,
            CheckKind.OTHER_IF,
            CheckKind.HARMONIC,
            CheckKind.IMAGE,
            CheckKind.DETECTOR_LAW);

    /** Every attenuator has such a step, and the level check asks for the same one. */
    private static final double HALF = 0.5;

    private int next;

    LevelCommand command(KeyAction action) {
        return switch (action) {
            case REST -> LevelCommand.check(CheckKind.REST);
            case LEVEL -> LevelCommand.check(CheckKind.LEVEL);
            case CUT -> LevelCommand.cut(HALF);
            case CHECK -> LevelCommand.check(SELDOM.get(next++ % SELDOM.size()));
            case DONE -> LevelCommand.done();
            case DROP -> LevelCommand.cancel();
            case REPAIRED -> LevelCommand.repaired();
            default -> throw new IllegalArgumentException(action + " is no level key");
        };
    }
}
