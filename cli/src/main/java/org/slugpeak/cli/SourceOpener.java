package org.slugpeak.cli;

import java.nio.file.Path;
import java.util.List;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.serial.SerialSources;
import org.slugpeak.bridge.sim.Pace;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.sound.CalibrationStore;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.bridge.sound.SoundSource;
import org.slugpeak.bridge.sound.SoundSources;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.run.SinkOutput;

/** Opens the way in that an address names. Each way in is loaded only when it is asked for. */
final class SourceOpener {

    private SourceOpener() {}

    static OpenedSource open(SourceAddress address, SourceOptions options) throws BridgeException {
        return open(address, options, false);
    }

    /** The same; text may be settled values, one for each step of a turn. */
    static OpenedSource open(SourceAddress address, SourceOptions options, boolean stepped) throws BridgeException {
        options.check(address);
        CsvOptions text = options.csv().withStepped(stepped);
        return switch (address.kind()) {
            case STANDARD_INPUT -> OpenedSource.of(CsvSource.standardInput(System.in, text, Ticker.system()));
            case CSV -> OpenedSource.of(CsvSource.open(Path.of(address.text()), text));
            case SESSION_LOG -> OpenedSource.of(LogSource.open(Path.of(address.text())));
            case SERIAL -> OpenedSource.of(SerialSources.open(address.text(), options.serial(), Ticker.system()));
            case WAV, SOUND -> OpenedSource.of(sound(address, options.sound()));
            case SIMULATION -> simulation(address, options);
        };
    }

    private static SoundSource sound(SourceAddress address, SoundOptions options) throws BridgeException {
        return new SoundSources(calibrations(), Ticker.system()).open(address, options);
    }

    /** What sound inputs were calibrated to. */
    static CalibrationStore calibrations() {
        return new CalibrationStore(StateFolder.path());
    }

    private static OpenedSource simulation(SourceAddress address, SourceOptions options) throws BridgeException {
        SimSource source =
                SimSource.open(address.name(), options.seed(), Pace.ofClock(Ticker.system(), options.speed()));
        return new OpenedSource(source, List.of(new SinkOutput(source.hand())));
    }
}
