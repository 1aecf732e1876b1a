package org.slugpeak.cli.run;

import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Says which adjuster is at hand, instead of the user or the source. It hears every record; since a sink must not call back into
 * the analysis that feeds it, it acts only when it is asked to lead. One thread: the session's.
 */
public interface Guide extends RecordSink {

    /** Nobody leads. */
    Guide NOBODY = new Guide() {
        @Override
        public void take(SessionRecord record) {}

        @Override
        public void begin(Analysis analysis) {}

        @Override
        public void lead(Analysis analysis, SessionControl control) {}

        @Override
        public void next() {}

        @Override
        public void back() {}

        @Override
        public void skip() {}
    };

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
     * Whether a record concerns anybody else: what is said of a slug that is turned means nothing where none is.
     *
     * @param record of the session
     * @return true where it goes to log, screen and ear
     */
    default boolean passesOn(SessionRecord record) {
        return true;
    }

    /** The user says: done, go on. */
    void next();

    /** The user wants to go back one adjuster. */
    void back();

    /** The user leaves the adjuster as it is. */
    void skip();
}
