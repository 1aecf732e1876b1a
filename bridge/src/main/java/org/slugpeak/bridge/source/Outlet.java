package org.slugpeak.bridge.source;

import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/** Where a {@link Decoder} puts what it makes of the bytes. Called in the thread that calls the decoder. */
public interface Outlet {

    /**
     * A reading was decoded.
     *
     * @param reading time on the axis of the arrival times that the decoder was given
     */
    void reading(Reading reading);

    /**
     * Something came that is no reading.
     *
     * @param kind what kind of damage
     * @param problem one line: what was wrong with it
     */
    void garbled(Garble kind, String problem);

    /**
     * The instrument broke the run of its readings by itself.
     *
     * @param tNanos when, on the same axis as the readings
     * @param notice what happened
     * @param detail what is known of it
     */
    void notice(long tNanos, LinkNotice notice, LinkDetail detail);

    /**
     * There is something to say that is no reading and breaks no run of them: a low battery.
     *
     * @param what gets its time from the session
     */
    void remark(Untimed what);

    /**
     * Something must be said to the instrument.
     *
     * @param bytes to be sent as they are
     */
    void send(byte[] bytes);

    /**
     * The instrument will not do what the user asked for: the work cannot go on.
     *
     * @param message one line: what was refused and what to do next
     */
    void refused(String message);
}
