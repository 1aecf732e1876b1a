package org.slugpeak.core.session;

/**
 * Says which families of records somebody takes: those whose method is overridden. All others go to {@link #other}.
 *
 * @param <R> what the methods give back
 */
public interface Families<R> {

    /**
     * For a record of a family that is not taken.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    R other(SessionRecord it);

    /**
     * For what frames a session and what it is made of: its opening, each reading, its end.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R frame(Frame it) {
        return other(it);
    }

    /**
     * For what the finder has found: where the maximum is, and which way to go.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R finding(Finding it) {
        return other(it);
    }

    /**
     * For what is to be known of the signal before a maximum is believed.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R caution(Caution it) {
        return other(it);
    }

    /**
     * For what the person is asked to do, and how that is answered.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R request(Request it) {
        return other(it);
    }

    /**
     * For the course of the work: adjusters, rounds, points that were taken.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R work(Work it) {
        return other(it);
    }

    /**
     * For what a person must judge while a plan is carried out.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R guard(Guard it) {
        return other(it);
    }

    /**
     * For what comes of a response curve, point by point.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R curveWork(CurveWork it) {
        return other(it);
    }

    /**
     * For what comes of a receiver's sheet, figure by figure.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R sheetWork(SheetWork it) {
        return other(it);
    }

    /**
     * For what happens between the instrument and the tool.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R link(Link it) {
        return other(it);
    }

    /**
     * For what the person says.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R said(Said it) {
        return other(it);
    }

    /**
     * For what is heard of audio beside its level.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R sound(Sound it) {
        return other(it);
    }

    /**
     * For what a log keeps of a kind that cannot be told from the log.
     *
     * @param it the record
     * @return what the caller of {@link SessionRecord#matchFamily} gets
     */
    default R logged(Logged it) {
        return other(it);
    }
}
