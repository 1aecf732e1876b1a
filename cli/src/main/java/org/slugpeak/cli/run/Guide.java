package org.slugpeak.cli.run;

import java.util.Optional;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Says which adjuster is at hand, and what a wish to go on, back or over it means. It hears every record; since a sink must not
 * call back into the analysis that feeds it, it acts only when it is asked to. One thread: the session's.
 */
public interface Guide extends RecordSink {

    /**
     * The session has been opened.
     *
     * @param analysis to be told things
     */
    void begin(Analysis analysis);

    /**
     * Asked after each reading and after each pass of the source.
     *
     * @param analysis to be told things
     * @param control to end the session
     */
    void lead(Analysis analysis, SessionControl control);

    /**
     * What of a record concerns anybody else: what is said of a slug that is turned means nothing where none is.
     *
     * @param record of the session
     * @return goes to log, screen and ear; empty where nothing does
     */
    default Optional<SessionRecord> passedOn(SessionRecord record) {
        return Optional.of(record);
    }

    /**
     * The same where nothing is turned: readings without a best, and what else concerns anybody.
     *
     * @param record of the session
     * @param concerns which kinds do
     * @return goes to log, screen and ear; empty where nothing does
     */
    static Optional<SessionRecord> uncompared(SessionRecord record, Families<Boolean> concerns) {
        if (record instanceof ReadingTaken taken) {
            return Optional.of(taken.uncompared());
        }
        return record.matchFamily(concerns) ? Optional.of(record) : Optional.empty();
    }

    /**
     * The user says: done, go on.
     *
     * @param analysis to be told things
     */
    void next(Analysis analysis);

    /**
     * The user wants to begin this adjuster anew. Where a guide repeats by itself nothing happens.
     *
     * @param analysis to be told things
     */
    default void again(Analysis analysis) {}

    /**
     * Somebody types what a counter at the generator shows, or no longer. Where nothing goes on by itself nothing happens.
     *
     * @param underWay whether the end of it is to be waited for
     */
    default void counting(boolean underWay) {}

    /**
     * A counter at the generator shows this; where no frequency is wanted it is nobody's business.
     *
     * @param analysis takes what is told of it
     * @param hz what was typed, Hz
     */
    default void counted(Analysis analysis, double hz) {}

    /**
     * The user wants to go back one step. Where there is no order of steps nothing happens.
     *
     * @param analysis to be told things
     */
    default void back(Analysis analysis) {}

    /**
     * The user leaves the adjuster as it is.
     *
     * @param analysis to be told things
     */
    void skip(Analysis analysis);
}
