package org.slugpeak.bridge.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.TreeMap;
import org.slugpeak.bridge.source.BadConfiguration;

/** The described instruments: those that come with the tool, and the user's own files. Immutable; any thread may use it. */
public final class Instruments {

    /** The descriptions that come with the tool, in the order in which they are shown. */
    public static final List<String> SHIPPED = List.of(
            "generic-scpi",
            "generic-line",
            "value-and-time",
            "slugpeak-adc",
            "fs9721",
            "dtm0660",
            "fs9922",
            "es519xx-14",
            "es519xx-14-lpf2",
            "es519xx-11-2400",
            "es519xx-11-alt",
            "es519xx-11-19200",
            "es519xx-11-5digit",
            "ut71x",
            "metex14",
            "lutron16",
            "qm1578",
            "template");

    private static final DescriptionFiles FILES =
            new DescriptionFiles("instrument", "/org/slugpeak/shared/instruments/", SHIPPED);
    private static final String FRAMES = "frame";

    /** A meter that says nothing before it is asked with a letter that means nothing to others. */
    private static final String ASKED_ONLY = "metex14";

    private final DescriptionReader reader;

    private Instruments(DescriptionReader reader) {
        this.reader = reader;
    }

    /**
     * With every language that is on the class path.
     *
     * @return the instruments
     * @throws BadConfiguration where two packages claim the same language
     */
    public static Instruments create() throws BadConfiguration {
        try {
            return with(ServiceLoader.load(DecoderProvider.class, Instruments.class.getClassLoader()));
        } catch (ServiceConfigurationError e) {
            throw new BadConfiguration(
                    "this installation is damaged (" + e.getMessage() + "): install slugpeak anew", e);
        }
    }

    static Instruments with(Iterable<DecoderProvider> providers) throws BadConfiguration {
        Map<String, DecoderProvider> byLanguage = new TreeMap<>();
        for (DecoderProvider each : providers) {
            if (byLanguage.put(each.language(), each) != null) {
                throw new BadConfiguration("two packages claim the instrument language '" + each.language()
                        + "': take one of them off the class path");
            }
        }
        return new Instruments(new DescriptionReader(byLanguage));
    }

    /**
     * The families that send frames by themselves, and are found by listening.
     *
     * @return their descriptions, in the order of {@link #SHIPPED}
     * @throws BadConfiguration where the installation is damaged
     */
    public List<InstrumentDescription> familiesHeard() throws BadConfiguration {
        List<InstrumentDescription> families = new ArrayList<>();
        for (String name : SHIPPED) {
            InstrumentDescription description = find(name);
            if (description.language().equals(FRAMES) && !name.equals(ASKED_ONLY)) {
                families.add(description);
            }
        }
        return families;
    }

    /**
     * Finds a description.
     *
     * @param nameOrFile the name of one that comes with the tool, or a file whose name ends in {@code .toml}
     * @return the description
     * @throws BadConfiguration with one line for each mistake, where it cannot be used
     */
    public InstrumentDescription find(String nameOrFile) throws BadConfiguration {
        return FILES.find(nameOrFile, reader::read);
    }
}
