package org.slugpeak.bridge.serial;

import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.InstrumentDescription;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.time.Ticker;

/** Opens serial instruments. Stateless; any thread may use it. */
public final class SerialSources {

    /** A meter that answers nothing to two questions and is slow to answer the third needs this long. */
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(15);

    private static final List<Integer> SPEEDS_TRIED = List.of(9600, 115_200);

    private SerialSources() {}

    /**
     * Opens an instrument and waits until it is known what it measures.
     *
     * @param path the port as the user gave it; it is looked up anew after each unplugging
     * @param options what the user said about the instrument
     * @param ticker the clock of the readings that carry no time stamp of their own
     * @return a source that outlives unplugging; the caller closes it
     * @throws BridgeException one line (for a description with several mistakes: one line each) that says what is in the way
     *     and what to do
     */
    public static InstrumentSource open(String path, SerialOptions options, Ticker ticker) throws BridgeException {
        Instruments instruments = Instruments.create();
        return options.meter().isPresent()
                ? described(path, instruments.find(options.meter().get()), options, ticker)
                : heard(path, instruments, options, ticker);
    }

    private static InstrumentSource described(
            String path, InstrumentDescription description, SerialOptions options, Ticker ticker)
            throws BridgeException {
        LinkSettings link = atSpeed(description.link(), options.baud());
        Decoder decoder = description.decoders().create(options.setting());
        InstrumentSource source = connect(path, link, decoder, ticker);
        if (!settle(source)) {
            throw new PortUnavailable(
                    path + ": no reading from '" + description.name() + "' at " + link.baud() + " baud"
                            + source.trouble()
                                    .map(trouble -> "; " + trouble)
                                    .orElse(": is it switched on, is the cable right, is --baud its speed?"));
        }
        return source;
    }

    private static InstrumentSource heard(String path, Instruments instruments, SerialOptions options, Ticker ticker)
            throws BridgeException {
        InstrumentDescription asker = instruments.find("generic-scpi");
        List<Integer> speeds =
                options.baud().isPresent() ? List.of(options.baud().getAsInt()) : SPEEDS_TRIED;
        Attempts attempts = new Attempts(path, speeds);
        for (int speed : speeds) {
            Audition audition = new Audition(
                    List.of(
                            instruments
                                    .find("slugpeak-adc")
                                    .decoders()
                                    .create(SerialOptions.defaults().setting()),
                            instruments
                                    .find("generic-line")
                                    .decoders()
                                    .create(SerialOptions.defaults().setting())),
                    asker.decoders().create(options.setting()));
            InstrumentSource source = connect(path, asker.link().withBaud(speed), audition, ticker);
            settle(source, audition);
            if (audition.isFound()) {
                return source;
            }
            attempts.failed(audition);
        }
        throw attempts.explain();
    }

    private static InstrumentSource connect(String path, LinkSettings link, Decoder decoder, Ticker ticker)
            throws PortUnavailable {
        SerialCarrier carrier = SerialCarrier.open(path, () -> SerialHardware.open(path, link), ticker);
        return new InstrumentSource(carrier, decoder, ticker);
    }

    private static LinkSettings atSpeed(LinkSettings link, OptionalInt baud) {
        return baud.isPresent() ? link.withBaud(baud.getAsInt()) : link;
    }

    private static void settle(InstrumentSource source, Audition audition) throws BridgeException {
        settle(source);
        if (!audition.isFound()) {
            source.close();
        }
    }

    private static boolean settle(InstrumentSource source) throws BridgeException {
        boolean settled = false;
        try {
            settled = source.settle(PATIENCE_NANOS);
            return settled;
        } finally {
            if (!settled) {
                source.close();
            }
        }
    }
}
