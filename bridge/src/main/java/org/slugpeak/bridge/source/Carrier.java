package org.slugpeak.bridge.source;

import java.util.Optional;

/**
 * Carries bytes to and from an instrument that may go and come back. A carrier that needs a thread of its own hides it; one
 * thread at a time calls it.
 */
public interface Carrier extends AutoCloseable {

    /**
     * What the user calls the other end.
     *
     * @return the path as the user gave it
     */
    String name();

    /**
     * The next thing that happened. The first is always {@link CarrierEvent.Opened}.
     *
     * @param waitNanos how long to wait for it; 0 does not wait
     * @return empty where nothing happened in that time
     */
    Optional<CarrierEvent> await(long waitNanos);

    /**
     * Sends bytes. Where the instrument is away they are dropped: it will be asked anew when it is back.
     *
     * @param bytes as they are
     */
    void send(byte[] bytes);

    /** Lets go of the port. Safe to call twice. */
    @Override
    void close();
}
