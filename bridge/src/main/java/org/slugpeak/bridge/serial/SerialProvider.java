package org.slugpeak.bridge.serial;

import org.slugpeak.bridge.instrument.CarrierProvider;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReopeningCarrier;
import org.slugpeak.bridge.time.Ticker;

/** Serial ports: whatever no other kind of line claims. Any thread may use it. */
public final class SerialProvider implements CarrierProvider {

    /** For the service loader. */
    public SerialProvider() {}

    @Override
    public boolean claims(String address) {
        return true;
    }

    @Override
    public boolean hasSettings() {
        return true;
    }

    @Override
    public Carrier open(String address, LinkSettings link, Ticker ticker) throws PortUnavailable {
        return ReopeningCarrier.open(address, () -> SerialHardware.open(address, link), ticker);
    }
}
