package org.slugpeak.bridge.serial;

import java.util.List;
import org.slugpeak.bridge.source.PortUnavailable;

/** The serial ports of this machine. Stateless; any thread may use it. */
public final class SerialPorts {

    private SerialPorts() {}

    /**
     * What is plugged in now. No port is opened.
     *
     * @return in the system's order; may be empty
     * @throws PortUnavailable where the serial library does not load here
     */
    public static List<PortInfo> list() throws PortUnavailable {
        return SerialHardware.list(StableNames.ofSystem());
    }
}
