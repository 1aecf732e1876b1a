package org.slugpeak.cli;

import java.nio.file.Path;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.time.Ticker;

/** Opens the way in that an address names. Each way in is loaded only when it is asked for. */
final class SourceOpener {

    private SourceOpener() {}

    static ReadingSource open(SourceAddress address, SourceOptions options) throws BridgeException {
        return switch (address.kind()) {
            case STANDARD_INPUT -> CsvSource.standardInput(System.in, options.csv(), Ticker.system());
            case CSV -> CsvSource.open(Path.of(address.text()), options.csv());
            case SESSION_LOG, WAV, SOUND, SIMULATION, SERIAL ->
                throw new BadConfiguration(address.text() + " cannot be read yet");
        };
    }
}
