package org.slugpeak.bridge.source;

import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/** Hears what a {@link ReadingSource} delivers, in order, in the thread that polls it. */
public interface SourceListener {

    /**
     * A reading came.
     *
     * @param reading time on the source's own axis
     */
    void reading(Reading reading);

    /**
     * The link changed.
     *
     * @param tNanos on the source's own axis
     * @param state what happened
     * @param detail what is known of it
     */
    void link(long tNanos, Link.State state, LinkDetail detail);

    /**
     * Something came that is no reading; it is counted and never becomes one.
     *
     * @param where line number, port or time, for the user
     * @param problem one line: what was wrong with it
     */
    void garbled(String where, String problem);

    /**
     * As {@link #garbled(String, String)}, from a source that can tell kinds apart.
     *
     * @param where line number, port or time, for the user
     * @param kind what kind of damage
     * @param problem one line: what was wrong with it
     */
    default void garbled(String where, Garble kind, String problem) {
        garbled(where, problem);
    }

    /**
     * The run of readings was broken by the instrument itself, though the link is sound.
     *
     * @param tNanos on the source's own axis
     * @param notice what happened
     * @param detail what is known of it
     */
    default void notice(long tNanos, LinkNotice notice, LinkDetail detail) {}

    /**
     * The source has something to say that is no reading: a tone found, hum under it, what is clipping.
     *
     * @param what gets its time from the session: that of the last reading
     */
    default void remark(Untimed what) {}

    /**
     * A person who types values has typed a word in place of one.
     *
     * @param word what is wanted
     */
    default void typed(TypedWord word) {}

    /**
     * A recorded session said that the user made a note here, or whoever works a simulated bench makes one.
     *
     * @param text one line
     */
    default void note(String text) {}

    /**
     * The same for an instruction.
     *
     * @param instruction what to do
     */
    default void command(Instruction instruction) {}

    /**
     * A recorded session said that the next adjuster was begun here.
     *
     * @param name of the adjuster
     */
    default void nextAdjuster(String name) {}

    /**
     * A recorded session said that the adjuster begun last was set or left.
     *
     * @param action which of the two
     */
    default void adjusterEnded(Adjuster.Action action) {}
}
