package org.slugpeak.core.session;

/**
 * One record of a session: the vocabulary that log, JSON stream, display, sound cues, replay and report share. All records
 * are immutable values that any thread may use; what is said of them to a person is no part of them.
 *
 * <p>A record belongs to one family and has one {@link Manner}. Whoever takes records says which families it takes
 * ({@link Families}, or {@link FamilyListener} where nothing is given back), and in a family that it looks into it meets every
 * kind (the family's own matcher), so that a new kind does not compile before each such place has been visited.
 */
public sealed interface SessionRecord
        permits Frame, Finding, Caution, Request, Work, Guard, CurveWork, SheetWork, Link, Said, Sound, Logged {

    /**
     * When it happened.
     *
     * @return nanoseconds from the first reading, on the readings' own clock
     */
    long tNanos();

    /**
     * How it is said, for those who do not care what it is.
     *
     * @return one of five
     */
    Manner manner();

    /**
     * Calls the one method that fits the record's family.
     *
     * @param <R> what the method gives back
     * @param families says which families are taken, and what becomes of the others
     * @return what that method gave
     */
    <R> R matchFamily(Families<R> families);

    /**
     * Calls the one method that fits the record's family, for whoever gives nothing back.
     *
     * @param listener says which families are heard
     */
    void tellFamily(FamilyListener listener);
}
