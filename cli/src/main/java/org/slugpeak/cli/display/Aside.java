package org.slugpeak.cli.display;

import java.util.Optional;

/**
 * What is shown beside the moment and comes from no record. Immutable; any thread may use it.
 *
 * @param status a few words for the corner, for example the state of the sound; may be empty
 * @param told something that the user must be told, one line; empty for most of the time
 * @param cover what is shown instead of the moment; empty for most of the time
 * @param flashes whether something has only just happened, for who does not hear it
 */
record Aside(String status, String told, Optional<Overlay> cover, boolean flashes) {

    static final Aside NONE = new Aside("", "", Optional.empty(), false);

    Aside withStatus(String newStatus) {
        return new Aside(newStatus, told, cover, flashes);
    }

    Aside withTold(String newTold) {
        return new Aside(status, newTold, cover, flashes);
    }

    /** Covered by that, or no longer where it was. */
    Aside toggled(Overlay over) {
        Optional<Overlay> other = Optional.of(over);
        return new Aside(status, told, cover.equals(other) ? Optional.empty() : other, flashes);
    }

    Aside withFlash(boolean newFlashes) {
        return new Aside(status, told, cover, newFlashes);
    }
}
