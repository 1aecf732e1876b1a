package org.slugpeak.cli;

import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.run.SessionRun;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.SessionStart;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Watches a meter. */
@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        header = "Watch the meter while you turn one adjuster after the other.",
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

    @Option(
            names = "--from",
            required = true,
            paramLabel = "SOURCE",
            description = {
                "/dev/ttyUSB0, COM3 ...: serial meter or ADC.  -: standard input.  FILE.csv: recorded readings.",
                "FILE.jsonl: session log.  FILE.wav, sound, sound:NAME: tone at the voice coil.  sim: simulated set."
            })
    private String from = "";

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private AnalysisOptions analysisOptions = new AnalysisOptions();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Override
    public Integer call() throws BridgeException {
        SourceAddress address = SourceAddress.parse(from);
        ReadingSource source = SourceOpener.open(address, sourceOptions);
        PeakSettings settings = analysisOptions.settings();
        Instant startedAt = InstantSource.system().instant();
        SessionRun session = new SessionRun(
                source,
                settings,
                () -> new SessionStart(
                        SessionStart.CURRENT_VERSION,
                        startedAt,
                        address.text(),
                        source.measurand(),
                        settings,
                        Version.tool()),
                outputOptions.open());
        Interruption.run(session);
        return 0;
    }
}
