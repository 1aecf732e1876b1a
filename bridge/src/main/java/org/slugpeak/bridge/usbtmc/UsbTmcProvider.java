package org.slugpeak.bridge.usbtmc;

import java.util.regex.Pattern;
import org.slugpeak.bridge.instrument.CarrierProvider;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReopeningCarrier;
import org.slugpeak.bridge.time.Ticker;

/** Instruments at {@code /dev/usbtmc0} and its like. Any thread may use it. */
public final class UsbTmcProvider implements CarrierProvider {

    private static final Pattern NAME = Pattern.compile(".*/usbtmc\\d+");

    /** For the service loader. */
    public UsbTmcProvider() {}

    @Override
    public boolean claims(String address) {
        return NAME.matcher(address).matches();
    }

    @Override
    public boolean hasSettings() {
        return false;
    }

    @Override
    public Carrier open(String address, LinkSettings link, Ticker ticker) throws PortUnavailable {
        return ReopeningCarrier.open(address, () -> UsbTmcPort.open(address), ticker);
    }
}
