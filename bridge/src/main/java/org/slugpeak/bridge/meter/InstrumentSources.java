package org.slugpeak.bridge.meter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.slugpeak.bridge.instrument.CarrierProvider;
import org.slugpeak.bridge.instrument.Carriers;
import org.slugpeak.bridge.instrument.InstrumentDescription;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.time.Ticker;

/** Opens instruments on whatever line. Stateless; any thread may use it. */
public final class InstrumentSources {

    /** A meter that answers nothing to two questions and is slow to answer the third needs this long. */
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(25);

    /** The first two are those of bench meters and boards, the next two those of hand-held meters. */
    private static final List<Integer> SPEEDS_TRIED = List.of(9600, 115_200, 2400, 19_200, 57_600, 38_400);

    private static final List<Integer> SPEEDS_OF_ADAPTERS = List.of(2400, 19_200);

    private InstrumentSources() {}

    /**
     * Opens an instrument and waits until it is known what it measures.
     *
     * @param address as the user gave it; it is looked up anew after each loss
     * @param options what the user said about the instrument
     * @param ticker the clock of the readings that carry no time stamp of their own
     * @return a source that outlives unplugging; the caller closes it
     * @throws BridgeException one line (for a description with several mistakes: one line each) that says what is in the way
     *     and what to do
     */
    public static InstrumentSource open(String address, InstrumentOptions options, Ticker ticker)
            throws BridgeException {
        CarrierProvider carriers = Carriers.of(address);
        if (!carriers.hasSettings() && options.baud().isPresent()) {
            throw new BadConfiguration("--baud is for serial ports; " + address + " has no speed: leave it out");
        }
        Instruments instruments = Instruments.create();
        return options.meter().isPresent()
                ? described(address, carriers, instruments.find(options.meter().get()), options, ticker)
                : heard(address, carriers, instruments, options, ticker);
    }

    private static InstrumentSource described(
            String address,
            CarrierProvider carriers,
            InstrumentDescription description,
            InstrumentOptions options,
            Ticker ticker)
            throws BridgeException {
        LinkSettings link = atSpeed(description.link(), options.baud());
        Decoder decoder = description.decoders().create(options.setting());
        InstrumentSource source = new InstrumentSource(carriers.open(address, link, ticker), decoder, ticker);
        if (!settle(source)) {
            OptionalInt baud = carriers.hasSettings() ? OptionalInt.of(link.baud()) : OptionalInt.empty();
            throw new PortUnavailable(
                    address + unheard(description, baud, options.baud().isPresent(), source.trouble()));
        }
        return source;
    }

    /** Why a described instrument is not read; it is not tried at speeds that nobody named, but which are worth a try is said. */
    static String unheard(
            InstrumentDescription description, OptionalInt baud, boolean speedWasGiven, Optional<String> trouble) {
        String usual = baud.isPresent()
                ? "is it switched on, is the cable right, is --baud its speed?"
                : "is it switched on, and does it listen there?";
        String hint = description.hint().isEmpty() ? usual : description.hint();
        return ": no reading from '" + description.name() + "'"
                + (baud.isPresent() ? " at " + baud.getAsInt() + " baud" : "")
                + trouble.map(it -> "; " + it).orElse(": " + hint)
                + (baud.isPresent() && !speedWasGiven ? otherSpeeds(baud.getAsInt()) : "");
    }

    private static String otherSpeeds(int baud) {
        return SPEEDS_TRIED.stream()
                .filter(speed -> speed != baud)
                .map(String::valueOf)
                .collect(Collectors.joining(", ", " (usual beside " + baud + ": ", ")"));
    }

    private static InstrumentSource heard(
            String address, CarrierProvider carriers, Instruments instruments, InstrumentOptions options, Ticker ticker)
            throws BridgeException {
        List<Integer> speeds = options.baud().isPresent()
                ? List.of(options.baud().getAsInt())
                : carriers.hasSettings() ? SPEEDS_TRIED : SPEEDS_TRIED.subList(0, 1);
        Attempts attempts = new Attempts(address, carriers.hasSettings() ? speeds : List.of());
        LinkSettings usual = instruments.find("generic-scpi").link();
        for (int speed : speeds) {
            boolean first = speed == speeds.get(0);
            Audition audition = audition(instruments, options, speed, first);
            LinkSettings link = SPEEDS_OF_ADAPTERS.contains(speed)
                    ? usual.withBaud(speed).feedingAnAdapter()
                    : usual.withBaud(speed);
            InstrumentSource source = new InstrumentSource(carriers.open(address, link, ticker), audition, ticker);
            settle(source, audition);
            if (audition.isFound()) {
                return source;
            }
            if (audition.question().isPresent()) {
                throw new BadConfiguration(address + ": " + audition.question().get());
            }
            attempts.failed(audition);
            if (Thread.currentThread().isInterrupted()) {
                break;
            }
        }
        throw attempts.explain();
    }

    private static Audition audition(Instruments instruments, InstrumentOptions options, int speed, boolean first)
            throws BadConfiguration {
        List<Decoder> talkers = List.of(
                instruments.find("slugpeak-adc").decoders().create(MeterSetting.DEFAULT),
                instruments.find("generic-line").decoders().create(MeterSetting.DEFAULT));
        // Where a line has no true speed (a converter inside the meter, a network) the first one hears all families.
        List<InstrumentDescription> families = instruments.familiesHeard().stream()
                .filter(each -> first || each.link().baud() == speed)
                .toList();
        MeterSetting withoutRange = new MeterSetting(options.setting().function(), OptionalDouble.empty());
        return new Audition(
                talkers,
                HeardFamilies.of(families, withoutRange),
                instruments.find("generic-scpi").decoders().create(options.setting()),
                first ? Audition.FIRST_SILENCE_NANOS : Audition.NEXT_SILENCE_NANOS);
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
