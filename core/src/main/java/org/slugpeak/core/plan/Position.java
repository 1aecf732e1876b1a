package org.slugpeak.core.plan;

/**
 * A place in a plan. Immutable; any thread may use it.
 *
 * @param stage which stage, from 0
 * @param round which round of it, from 1
 * @param step which step of it, from 0
 */
public record Position(int stage, int round, int step) {

    /** Where every plan begins. */
    public static final Position START = new Position(0, 1, 0);
}
