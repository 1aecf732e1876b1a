package org.slugpeak.bridge.tcp;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.instrument.CarrierProvider;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReopeningCarrier;
import org.slugpeak.bridge.time.Ticker;

/** Instruments at {@code tcp:HOST:PORT}. Any thread may use it. */
public final class TcpProvider implements CarrierProvider {

    private static final String PREFIX = "tcp:";

    /** For the service loader. */
    public TcpProvider() {}

    @Override
    public boolean claims(String address) {
        return address.toLowerCase(Locale.ROOT).startsWith(PREFIX);
    }

    @Override
    public boolean hasSettings() {
        return false;
    }

    @Override
    public Carrier open(String address, LinkSettings link, Ticker ticker) throws PortUnavailable {
        Optional<TcpAddress> parsed = TcpAddress.parse(address);
        if (parsed.isEmpty()) {
            throw new PortUnavailable(address + " is no address on the network: write tcp:HOST:PORT, for example"
                    + " tcp:192.168.1.20:" + TcpAddress.USUAL_PORT);
        }
        return ReopeningCarrier.open(address, () -> TcpPort.open(parsed.get()), ticker);
    }
}
