package org.slugpeak.cli.cue;

import org.slugpeak.cli.moment.Call;

/** What is to be told apart by ear alone; {@link Score} says how each sounds. Immutable; any thread may use it. */
enum Event {
    /** Past it: turn back. */
    PASSED,
    /** Back at the best: stop. */
    RETURNED,
    /** The adjuster is recorded. */
    HELD,
    /** The reading cannot be trusted. */
    OVERLOAD,
    /** The instrument has gone, or is silent. */
    LINK_LOST,
    /** The instrument is back. */
    LINK_BACK,
    /** Something needs a look at the screen. */
    LOOK,
    /** Within a decibel of the best: the fine scale. */
    FINE,
    /** More than a decibel away: the coarse scale. */
    COARSE,
    /** All pitches moved by an octave. */
    SHIFT,
    /** The next adjuster. */
    BEGIN;

    static Event of(Call call) {
        return switch (call) {
            case BACK -> PASSED;
            case STOP -> RETURNED;
            case HELD -> HELD;
            case OVERLOAD -> OVERLOAD;
            case NO_LINK -> LINK_LOST;
            case LINK_BACK -> LINK_BACK;
            case LOOK -> LOOK;
            case BEGIN -> BEGIN;
        };
    }

    /** Whether it is worth a terminal bell where there is no sound. */
    boolean ringsBell() {
        return switch (this) {
            case PASSED, RETURNED, HELD, OVERLOAD, LINK_LOST, LOOK -> true;
            case LINK_BACK, FINE, COARSE, SHIFT, BEGIN -> false;
        };
    }
}
