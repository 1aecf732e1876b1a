package org.slugpeak.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.SessionRunner;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.open.WayIn.Trait;
import org.slugpeak.cli.option.AnalysisOptions;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.run.NumberedAdjusters;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Runs the analysis over a recorded session. */
@Command(name = "replay", mixinStandardHelpOptions = true)
public final class ReplayCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    private Path file = Path.of("");

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private AnalysisOptions analysisOptions = new AnalysisOptions();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Override
    public Integer call() throws BridgeException {
        SourceAddress address = new SourceAddress(file.toString());
        WayIn way = WayIn.of(address);
        if (!way.has(Trait.RECORDED)) {
            throw new BadInput(file + " is no recording by its name; replay takes *.jsonl, *.csv or *.wav");
        }
        if (way.has(Trait.LOG)) {
            return SessionRunner.replay(file, source -> outputOptions.open());
        }
        return readings(address, way);
    }

    private int readings(SourceAddress address, WayIn way) throws BridgeException {
        AnalysisSettings settings = analysisOptions.settings(false);
        sourceOptions.takeSteps(settings.stepped());
        return SessionRunner.run(new SessionParts(
                address.text(),
                () -> way.open(address, sourceOptions),
                source -> outputOptions.open(),
                settings,
                settings.stepped() ? NumberedAdjusters.byKey() : NumberedAdjusters.byDwell()));
    }
}
