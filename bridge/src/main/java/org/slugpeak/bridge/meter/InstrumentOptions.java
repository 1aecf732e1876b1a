package org.slugpeak.bridge.meter;

import java.util.Optional;
import java.util.OptionalInt;
import org.slugpeak.bridge.instrument.MeterSetting;

/**
 * What the user said about a serial instrument. Immutable; any thread may use it.
 *
 * @param meter name of a description that comes with the tool, or a file that ends in {@code .toml}; empty lets the tool
 *     find out
 * @param baud bits a second; empty takes the description's
 * @param setting what a meter shall measure
 */
public record InstrumentOptions(Optional<String> meter, OptionalInt baud, MeterSetting setting) {

    /**
     * Nothing said: the tool finds out what is there and measures DC volts.
     *
     * @return the options
     */
    public static InstrumentOptions defaults() {
        return new InstrumentOptions(Optional.empty(), OptionalInt.empty(), MeterSetting.DEFAULT);
    }

    /**
     * With an instrument description.
     *
     * @param nameOrFile a name or a {@code .toml} file
     * @return a copy
     */
    public InstrumentOptions withMeter(String nameOrFile) {
        return new InstrumentOptions(Optional.of(nameOrFile), baud, setting);
    }

    /**
     * At a speed.
     *
     * @param bitsPerSecond positive
     * @return a copy
     */
    public InstrumentOptions withBaud(int bitsPerSecond) {
        return new InstrumentOptions(meter, OptionalInt.of(bitsPerSecond), setting);
    }
}
