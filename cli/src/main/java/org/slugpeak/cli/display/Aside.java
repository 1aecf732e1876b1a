package org.slugpeak.cli.display;

/**
 * What is shown beside the moment and comes from no record. Immutable; any thread may use it.
 *
 * @param status a few words for the corner, for example the state of the sound; may be empty
 * @param told something that the user must be told, one line; empty for most of the time
 */
record Aside(String status, String told) {

    static final Aside NONE = new Aside("", "");

    Aside withStatus(String newStatus) {
        return new Aside(newStatus, told);
    }

    Aside withTold(String newTold) {
        return new Aside(status, newTold);
    }
}
