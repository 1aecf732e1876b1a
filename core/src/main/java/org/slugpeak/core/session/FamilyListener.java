package org.slugpeak.core.session;

/**
 * Hears records, family by family, and gives nothing back: {@link Families} for whoever only acts. Families whose method is not
 * overridden pass by. Whoever looks into the kinds of a family has its matcher give what is to be done ({@code Matcher<Runnable>}).
 * Called in the one thread that owns the analysis.
 */
public interface FamilyListener {

    /**
     * For what frames a session and what it is made of: its opening, each reading, its end.
     *
     * @param it the record
     */
    default void frame(Frame it) {}

    /**
     * For what the finder has found: where the maximum is, and which way to go.
     *
     * @param it the record
     */
    default void finding(Finding it) {}

    /**
     * For what is to be known of the signal before a maximum is believed.
     *
     * @param it the record
     */
    default void caution(Caution it) {}

    /**
     * For what the person is asked to do, and how that is answered.
     *
     * @param it the record
     */
    default void request(Request it) {}

    /**
     * For the course of the work: adjusters, rounds, points that were taken.
     *
     * @param it the record
     */
    default void work(Work it) {}

    /**
     * For what a person must judge while a plan is carried out.
     *
     * @param it the record
     */
    default void guard(Guard it) {}

    /**
     * For what comes of a response curve, point by point.
     *
     * @param it the record
     */
    default void curveWork(CurveWork it) {}

    /**
     * For what comes of a receiver's sheet, figure by figure.
     *
     * @param it the record
     */
    default void sheetWork(SheetWork it) {}

    /**
     * For what happens between the instrument and the tool.
     *
     * @param it the record
     */
    default void link(Link it) {}

    /**
     * For what the person says.
     *
     * @param it the record
     */
    default void said(Said it) {}

    /**
     * For what is heard of audio beside its level.
     *
     * @param it the record
     */
    default void sound(Sound it) {}

    /**
     * For what a log keeps of a kind that cannot be told from the log.
     *
     * @param it the record
     */
    default void logged(Logged it) {}
}
