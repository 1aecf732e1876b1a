package org.slugpeak.bridge.meter;

import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.scpi.ScpiGenerator;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;

/** Opens a signal generator that obeys SCPI, on whatever line. Stateless; any thread may use it. */
public final class GeneratorPort {

    /** What most bench instruments are set to when they leave the works. */
    public static final int USUAL_BAUD = 9600;

    private GeneratorPort() {}

    /**
     * Opens a generator and waits until it has said its name.
     *
     * @param path address of its line
     * @param baud bits a second of a serial port
     * @param ticker the clock of the waiting
     * @return the generator; the caller closes it
     * @throws BridgeException one line that says what is in the way and what to do
     */
    public static ScpiGenerator open(String path, int baud, Ticker ticker) throws BridgeException {
        LinkSettings link = LinkSettings.USUAL.withBaud(baud);
        ScpiGenerator generator = new ScpiGenerator(Carriers.of(path).open(path, link, ticker), ticker);
        try {
            generator.identify();
            return generator;
        } catch (BridgeException silent) {
            generator.close();
            throw silent;
        }
    }
}
