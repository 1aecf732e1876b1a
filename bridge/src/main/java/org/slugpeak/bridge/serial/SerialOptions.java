package org.slugpeak.bridge.serial;

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
public record SerialOptions(Optional<String> meter, OptionalInt baud, MeterSetting setting) {

    /**
     * Nothing said: the tool finds out what is there and measures DC volts.
     *
     * @return the options
     */
    public static SerialOptions defaults() {
        return new SerialOptions(Optional.empty(), OptionalInt.empty(), MeterSetting.DEFAULT);
    }

    /**
     * With an instrument description.
     *
     * @param nameOrFile a name or a {@code .toml} file
     * @return a copy
     */
    public SerialOptions withMeter(String nameOrFile) {
        return new SerialOptions(Optional.of(nameOrFile), baud, setting);
    }

    /**
     * At a speed.
     *
     * @param bitsPerSecond positive
     * @return a copy
     */
    public SerialOptions withBaud(int bitsPerSecond) {
        return new SerialOptions(meter, OptionalInt.of(bitsPerSecond), setting);
    }
}
