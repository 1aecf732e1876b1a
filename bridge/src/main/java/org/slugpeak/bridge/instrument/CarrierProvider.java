package org.slugpeak.bridge.instrument;

import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.time.Ticker;

/**
 * A kind of line that instruments are connected by. A new one is one package with one implementation of this, named in
 * {@code META-INF/services}; the first there that claims an address has it. Any thread may use it.
 */
public interface CarrierProvider {

    /**
     * Whether an address is one of this kind.
     *
     * @param address as the user gave it
     * @return true to open it
     */
    boolean claims(String address);

    /**
     * Whether the line has a speed and other settings that both ends must agree on.
     *
     * @return false where {@link #open} passes them over
     */
    boolean hasSettings();

    /**
     * Opens an instrument's line, in the caller's thread.
     *
     * @param address one that was claimed
     * @param link its settings
     * @param ticker the clock of the events
     * @return a carrier that loses and finds its instrument again; the caller closes it
     * @throws PortUnavailable one line that says what is in the way and what to do
     */
    Carrier open(String address, LinkSettings link, Ticker ticker) throws PortUnavailable;
}
