package org.slugpeak.bridge.serial;

import org.slugpeak.bridge.source.PortUnavailable;

/** Opens one port, as often as it is asked. */
@FunctionalInterface
interface PortOpener {

    OpenPort open() throws PortUnavailable;
}
