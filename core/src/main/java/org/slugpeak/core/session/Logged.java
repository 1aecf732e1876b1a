package org.slugpeak.core.session;

/**
 * What a log keeps of something whose kind, or whose figures, version 1 of the format has in words only, or which a later version
 * wrote. The words stand beside it where logs are read. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param topic what it was about, as far as the log tells
 * @param amount the figure that the log has, in the unit of its topic; NaN where there is none
 */
public record Logged(long tNanos, Topic topic, double amount) implements SessionRecord {

    /** What the words of a log are about. */
    public enum Topic {
        /** A move of a check was asked for. */
        ASKED,
        /** An adjuster was to be turned. */
        TURN,
        /** The hand was to be taken away. */
        HANDS_OFF,
        /** The generator was to be set. */
        SET_GENERATOR,
        /** A figure that stands as text, and cannot be read. */
        DAMAGED,
        /** How things were to be set up, or what else is worth keeping. */
        TOLD
    }

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R matchFamily(Families<R> families) {
        return families.logged(this);
    }

    @Override
    public void tellFamily(FamilyListener listener) {
        listener.logged(this);
    }
}
