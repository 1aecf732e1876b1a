package org.slugpeak.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.cli.run.SessionRun.AdjusterPolicy;
import org.slugpeak.core.peak.PeakSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Watches a meter. */
@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        header = WatchCommand.HEADER,
        description = {
            "Shows the live reading, the best so far and how far below it you are; says when you have",
            "passed the peak and when you are back on it."
        },
        footer = {
            "",
            "Examples:",
            "  slugpeak watch --from /dev/ttyUSB0 --log tuesday.jsonl",
            "  slugpeak watch --from sound --seek dip",
            "  my-meter-program | slugpeak watch --from - --json"
        })
final class WatchCommand implements Callable<Integer> {

    /** What it does, in a line of the list of commands. */
    static final String HEADER = "Watch the meter while you turn one adjuster after the other.";

    @Option(
            names = "--from",
            required = true,
            paramLabel = "SOURCE",
            description = {
                "/dev/ttyUSB0, COM3 ...: serial meter or ADC.  -: standard input.",
                "FILE.csv: recorded readings.  FILE.jsonl: session log.",
                "FILE.wav, sound, sound:NAME: tone at the voice coil.",
                "sim, sim:NAME: simulated set."
            })
    private String from = "";

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private AnalysisOptions analysisOptions = new AnalysisOptions();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Option(
            names = "--stay",
            description = "Stay with one adjuster until a key says otherwise. Usual: when an adjuster was "
                    + "held and the reading moves again, the next one is begun.")
    private boolean stay;

    @Override
    public Integer call() throws BridgeException {
        SourceAddress address = SourceAddress.parse(from);
        PeakSettings settings = analysisOptions.settings();
        OpenedSource source = SourceOpener.open(address, sourceOptions);
        return SessionRunner.run(address.text(), source, settings, policy(address), outputs(address));
    }

    private List<SessionOutput> outputs(SourceAddress address) throws BridgeException {
        return switch (address.kind()) {
            case CSV, SESSION_LOG, WAV -> outputOptions.open();
            default -> outputOptions.openLive(Map.of());
        };
    }

    private AdjusterPolicy policy(SourceAddress address) {
        return switch (address.kind()) {
            case SESSION_LOG, SIMULATION -> AdjusterPolicy.FROM_SOURCE;
            default -> stay ? AdjusterPolicy.BY_KEY : AdjusterPolicy.BY_DWELL;
        };
    }
}
