package org.slugpeak.cli.open;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.meter.InstrumentSources;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.sim.Tempo;
import org.slugpeak.bridge.sound.CalibrationStore;
import org.slugpeak.bridge.sound.SoundSources;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.program.StateFolder;
import org.slugpeak.cli.run.SinkOutput;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Plan;

/** Opens the ways in. Each is loaded only when it is asked for. */
public final class SourceOpener {

    private SourceOpener() {}

    static OpenedSource standardInput(SourceAddress address, SourceOptions options) {
        return OpenedSource.of(CsvSource.standardInput(System.in, options.csv(), Ticker.system()));
    }

    static OpenedSource textFile(SourceAddress address, SourceOptions options) throws BridgeException {
        return OpenedSource.of(csv(Path.of(address.text()), options.csv()));
    }

    private static CsvSource csv(Path path, CsvOptions options) throws BridgeException {
        boolean other = Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path);
        return other ? CsvSource.pipe(path, options, Ticker.system()) : CsvSource.open(path, options);
    }

    static OpenedSource sessionLog(SourceAddress address, SourceOptions options) throws BridgeException {
        return OpenedSource.of(LogSource.open(Path.of(address.text())));
    }

    static OpenedSource instrument(SourceAddress address, SourceOptions options) throws BridgeException {
        return OpenedSource.of(InstrumentSources.open(address.text(), options.serial(), Ticker.system()));
    }

    static OpenedSource audioFile(SourceAddress address, SourceOptions options) throws BridgeException {
        return OpenedSource.of(sounds().openFile(Path.of(address.text()), options.sound()));
    }

    static OpenedSource soundInput(SourceAddress address, SourceOptions options) throws BridgeException {
        return OpenedSource.of(sounds().openInput(address.name(), options.sound()));
    }

    static OpenedSource simulation(SourceAddress address, SourceOptions options) throws BridgeException {
        Tempo pace = Tempo.ofClock(Ticker.system(), options.speed());
        if (options.measuredAt().isPresent()) {
            return measured(address, options, pace);
        }
        Optional<Plan> plan = options.rehearsed().filter(any -> address.name().equals(SimSource.REHEARSAL));
        SimSource source = plan.isPresent()
                ? SimSource.rehearsing(plan.get(), options.doneBefore(), options.seed(), pace)
                : SimSource.open(address.name(), options.seed(), pace);
        return new OpenedSource(source, List.of(new SinkOutput(source.hand())));
    }

    private static OpenedSource measured(SourceAddress address, SourceOptions options, Tempo pace)
            throws BridgeException {
        boolean inOrder = address.name().equals(SimSource.ALIGNED);
        if (!SimSource.obeys(address.name())) {
            throw new BadConfiguration("a sheet is measured at the set of its plan: --from sim:" + SimSource.REHEARSAL
                    + " as before the work, --from sim:" + SimSource.ALIGNED + " as after it");
        }
        MeterPoint point = options.measuredAt().orElseThrow();
        SimSource source = SimSource.measuring(options.rehearsed().orElseThrow(), inOrder, point, options.seed(), pace);
        return new OpenedSource(source, List.of(new SinkOutput(source.hand())));
    }

    /** The sound inputs and audio files, with what they were calibrated to. */
    public static SoundSources sounds() {
        return new SoundSources(calibrations(), Ticker.system());
    }

    /** What sound inputs were calibrated to. */
    public static CalibrationStore calibrations() {
        return new CalibrationStore(StateFolder.path());
    }
}
