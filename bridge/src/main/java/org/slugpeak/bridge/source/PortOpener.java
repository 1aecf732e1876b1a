package org.slugpeak.bridge.source;

/** Opens one line, as often as it is asked. Called in the thread of its reader. */
@FunctionalInterface
public interface PortOpener {

    /**
     * Opens it.
     *
     * @return the open line
     * @throws PortUnavailable where that is not possible now
     */
    OpenPort open() throws PortUnavailable;
}
