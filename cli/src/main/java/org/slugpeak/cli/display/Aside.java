package org.slugpeak.cli.display;

/**
 * What is shown beside the moment and comes from no record. Immutable; any thread may use it.
 *
 * @param status a few words for the corner, for example the state of the sound; may be empty
 * @param told something that the user must be told, one line; empty for most of the time
 * @param keys whether all keys are told of, instead of the moment
 * @param flashes whether something has only just happened, for who does not hear it
 */
record Aside(String status, String told, boolean keys, boolean flashes) {

    static final Aside NONE = new Aside("", "", false, false);

    Aside withStatus(String newStatus) {
        return new Aside(newStatus, told, keys, flashes);
    }

    Aside withTold(String newTold) {
        return new Aside(status, newTold, keys, flashes);
    }

    Aside withKeys(boolean newKeys) {
        return new Aside(status, told, newKeys, flashes);
    }

    Aside withFlash(boolean newFlashes) {
        return new Aside(status, told, keys, newFlashes);
    }
}
