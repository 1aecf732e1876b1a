package org.slugpeak.bridge.instrument;

import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.toml.Section;

/** Reads the {@code [link]} table of a description. Stateless; any thread may use it. */
public final class LinkTable {

    private static final int SLOWEST_BAUD = 50;
    private static final int FASTEST_BAUD = 4_000_000;

    private LinkTable() {}

    /**
     * Reads it; mistakes are noted in the section.
     *
     * @param section the table, empty where the description has none
     * @return how the port is set
     */
    public static LinkSettings read(Section section) {
        LinkSettings usual = LinkSettings.USUAL;
        return new LinkSettings(
                section.whole("baud", SLOWEST_BAUD, FASTEST_BAUD, usual.baud()),
                section.whole("data-bits", 7, 8, usual.dataBits()),
                section.choice(
                        "parity",
                        Map.of(
                                "none", LinkSettings.Parity.NONE,
                                "even", LinkSettings.Parity.EVEN,
                                "odd", LinkSettings.Parity.ODD),
                        usual.parity()),
                section.whole("stop-bits", 1, 2, usual.stopBits()),
                section.flag("reset-on-open", usual.resetOnOpen()),
                line(section, "dtr"),
                line(section, "rts"));
    }

    private static Optional<Boolean> line(Section section, String key) {
        return section.has(key) ? Optional.of(section.flag(key, true)) : Optional.empty();
    }
}
