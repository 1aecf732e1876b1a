package org.slugpeak.bridge.generator;

import java.util.List;
import java.util.OptionalInt;
import org.slugpeak.bridge.instrument.CarrierProvider;
import org.slugpeak.bridge.instrument.Carriers;
import org.slugpeak.bridge.instrument.DescriptionFiles;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.generator.GeneratorReach;

/** Opens generators on whatever line. Stateless; any thread may use it. */
public final class Generators {

    /** The descriptions that come with the tool, the usual one first. */
    public static final List<String> SHIPPED = List.of("generic-scpi", "template");

    private static final DescriptionFiles FILES =
            new DescriptionFiles("generator", "/org/slugpeak/shared/generators/", SHIPPED);

    private Generators() {}

    /**
     * Opens a generator and waits until it has said its name. Nothing of it is changed yet.
     *
     * @param address of its line, as the user gave it
     * @param kind name of a description that comes with the tool, or a file that ends in {@code .toml}
     * @param baud bits a second of a serial port; empty takes the description's
     * @param ticker the clock of the waiting
     * @return the generator; the caller leaves it
     * @throws BridgeException one line (for a description with several mistakes: one line each) that says what is in the way and
     *     what to do
     */
    public static DescribedGenerator open(String address, String kind, OptionalInt baud, Ticker ticker)
            throws BridgeException {
        GeneratorDescription description = find(kind);
        CarrierProvider carriers = Carriers.of(address);
        if (!carriers.hasSettings() && baud.isPresent()) {
            throw new BadConfiguration(
                    "--generator-baud is for serial ports; " + address + " has no speed: leave it out");
        }
        LinkSettings link = baud.isPresent() ? description.link().withBaud(baud.getAsInt()) : description.link();
        DescribedGenerator generator =
                new DescribedGenerator(description, carriers.open(address, link, ticker), ticker);
        boolean greeted = false;
        try {
            generator.greet();
            generator.askLimits();
            greeted = true;
            return generator;
        } finally {
            if (!greeted) {
                generator.close();
            }
        }
    }

    /**
     * What a kind of generator can do; nothing is opened.
     *
     * @param kind name of a description that comes with the tool, or a file that ends in {@code .toml}
     * @return what is set from here
     * @throws BadConfiguration with one line for each mistake in the description
     */
    public static GeneratorReach reach(String kind) throws BadConfiguration {
        return find(kind).reach();
    }

    static GeneratorDescription find(String kind) throws BadConfiguration {
        return FILES.find(kind, GeneratorReader::read);
    }
}
