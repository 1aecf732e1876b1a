package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.curve.CurveFile;
import org.slugpeak.bridge.meter.GeneratorPort;
import org.slugpeak.bridge.scpi.ScpiGenerator;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.curve.CurveGuide;
import org.slugpeak.cli.curve.CurveOutput;
import org.slugpeak.cli.curve.CurveText;
import org.slugpeak.cli.curve.GeneratorControl;
import org.slugpeak.cli.open.OpenedSource;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.SessionRunner;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.quantity.FrequencySpan;
import org.slugpeak.cli.run.LogOutput;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.curve.CurveTiming;
import org.slugpeak.core.curve.ResponseCurve;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code slugpeak curve}: response against generator frequency. */
@Command(
        name = "curve",
        mixinStandardHelpOptions = true,
        header = CurveCommand.HEADER,
        description = {
            "Names each generator setting in a line and takes the reading when it has moved and stands again, or after",
            "the dwell, or at once with r, n or Enter; p or b measures the point before again, k leaves one out, q ends.",
            "Keep the generator's level as it is, and low enough that the AVC does not act."
        },
        footer = {
            "",
            "Examples:",
            "  slugpeak curve --from /dev/ttyUSB0 --span 440..470 --step 1 --log before.jsonl",
            "  slugpeak curve --from /dev/ttyUSB0 --span 440..470 --generator /dev/ttyUSB1 --log after.jsonl \\",
            "      --compare before.jsonl",
            "  slugpeak curve --points curve.csv",
            "  slugpeak report before.jsonl after.jsonl --out set.html    both curves in one chart"
        })
public final class CurveCommand implements Callable<Integer> {

    /** What it does, in a line of the list of commands. */
    public static final String HEADER =
            "Measure the response curve: step the generator, read the meter, tell centre, widths and skirts.";

    private static final double LONGEST_DWELL_SECONDS = 600;
    private static final int MOST_POINTS = 2000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--from", paramLabel = "SOURCE", description = "Where readings come from; see watch.")
    private Optional<String> from = Optional.empty();

    @Option(
            names = "--points",
            paramLabel = "FILE",
            description = "Instead of readings: points from a text (frequency in kHz,level) or a session log.")
    private Optional<Path> points = Optional.empty();

    @Option(
            names = "--span",
            paramLabel = "F..F",
            converter = FrequencySpan.Converter.class,
            description = "From where to where, kHz, for example 440..470.")
    private Optional<FrequencySpan> span = Optional.empty();

    @Option(
            names = "--step",
            paramLabel = "F",
            converter = Frequency.class,
            defaultValue = "1kHz",
            description = "Distance of the points (default: ${DEFAULT-VALUE}).")
    private double stepHz;

    @Option(
            names = "--generator",
            paramLabel = "PORT",
            description =
                    "A generator that obeys SCPI, on a serial port, tcp:HOST:PORT or /dev/usbtmc0: it is stepped for you. Its"
                            + " level and output switch stay as you set them.")
    private Optional<String> generatorPort = Optional.empty();

    @Option(
            names = "--generator-baud",
            paramLabel = "BITS/S",
            defaultValue = "" + GeneratorPort.USUAL_BAUD,
            description = "Speed of the generator's line (default: ${DEFAULT-VALUE}).")
    private int generatorBaud;

    @Option(
            names = "--dwell",
            paramLabel = "S",
            defaultValue = "6",
            description = "By hand: seconds after which a reading that did not move is taken (default:"
                    + " ${DEFAULT-VALUE}); 0: only with n or Enter.")
    private double dwellSeconds;

    @Option(names = "--no-rest", description = "Do not ask for the resting reading, generator off, first.")
    private boolean withoutRest;

    @Option(
            names = "--centre",
            paramLabel = "F",
            converter = Frequency.class,
            description = "Where the curve should be centred, for the skirts. Usual: the middle of the -3 dB points.")
    private Optional<Double> centreHz = Optional.empty();

    @Option(
            names = "--transformers",
            paramLabel = "N",
            defaultValue = "2",
            description = "How many transformers the signal passes, for the model (default: ${DEFAULT-VALUE}).")
    private int transformers;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write the points to a new FILE.")
    private Optional<Path> csv = Optional.empty();

    @Option(
            names = "--compare",
            paramLabel = "BEFORE",
            description = "Set beside an earlier curve: a session log, or a text with points.")
    private Optional<Path> compare = Optional.empty();

    @Option(names = "--plain", description = "Lines instead of the screen, for a screen reader.")
    private boolean plain;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Keep the session in FILE (JSON lines). A file that is there already is never touched.")
    private Optional<Path> log = Optional.empty();

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Override
    public Integer call() throws BridgeException {
        refuseWrongUsage();
        List<ResponsePoint> before =
                compare.isPresent() ? CurveFile.read(compare.get(), sourceOptions.decimalComma()) : List.of();
        if (points.isPresent()) {
            show(CurveFile.read(points.get(), sourceOptions.decimalComma()), before);
            return 0;
        }
        return measure(before);
    }

    private void refuseWrongUsage() {
        require(from.isPresent() != points.isPresent(), "say where readings come from (--from), or --points FILE");
        require(from.isEmpty() || span.isPresent(), "say from where to where: --span 440..470");
        require(transformers >= 1 && transformers <= 6, "--transformers takes 1 to 6");
        require(
                dwellSeconds >= 0 && dwellSeconds <= LONGEST_DWELL_SECONDS,
                "--dwell takes 0 to " + (int) LONGEST_DWELL_SECONDS + " seconds");
        require(generatorBaud > 0, "--generator-baud takes a number above 0");
        span.ifPresent(it -> require(
                (it.highHz() - it.lowHz()) / stepHz < MOST_POINTS,
                "more than " + MOST_POINTS + " points: widen --step"));
    }

    private void require(boolean met, String otherwise) {
        if (!met) {
            throw new ParameterException(spec.commandLine(), otherwise);
        }
    }

    private int measure(List<ResponsePoint> before) throws BridgeException {
        if (generatorPort.isEmpty()) {
            return measure(before, GeneratorControl.BY_HAND, CurveTiming.byHand(dwellSeconds));
        }
        try (ScpiGenerator generator = GeneratorPort.open(generatorPort.get(), generatorBaud, Ticker.system())) {
            return measure(before, generator::frequency, CurveTiming.automatic());
        }
    }

    private int measure(List<ResponsePoint> before, GeneratorControl generator, CurveTiming timing)
            throws BridgeException {
        SourceAddress address = new SourceAddress(from.orElseThrow());
        List<Double> frequencies = span.orElseThrow().steps(stepHz);
        CurveProgress progress = new CurveProgress(frequencies, timing, !withoutRest);
        CurveGuide guide = new CurveGuide(progress, !withoutRest, generator);
        int exitCode = SessionRunner.run(new SessionParts(
                address.text(),
                () -> WayIn.of(address).open(address, sourceOptions),
                this::outputs,
                AnalysisSettings.following(PeakSettings.defaults()),
                guide));
        show(progress.points(), before);
        if (guide.failure().isPresent()) {
            throw guide.failure().get();
        }
        if (exitCode == 0 && !progress.isOver()) {
            throw new BadInput("the curve is not complete: " + progress.index() + " of " + frequencies.size()
                    + " points were taken before the session ended");
        }
        return exitCode;
    }

    private List<SessionOutput> outputs(OpenedSource source) throws BridgeException {
        List<SessionOutput> outputs = new ArrayList<>();
        if (log.isPresent()) {
            outputs.add(LogOutput.create(log.get(), System.err));
        }
        String unit = source.source().measurand().unit();
        outputs.add(new CurveOutput(System.err, unit, plain, generatorPort.isEmpty()));
        return outputs;
    }

    private void show(List<ResponsePoint> measured, List<ResponsePoint> before) throws BadInput {
        PrintWriter out = spec.commandLine().getOut();
        if (csv.isPresent() && !measured.isEmpty()) {
            CurveFile.write(csv.get(), measured);
        }
        try {
            ResponseCurve curve = ResponseCurve.through(measured);
            OptionalDouble centre = centreHz.map(OptionalDouble::of).orElse(OptionalDouble.empty());
            CurveText.describe(curve, centre, transformers).forEach(out::println);
            if (!before.isEmpty()) {
                out.println(CurveText.compare(ResponseCurve.through(before), curve));
            }
        } catch (Refused tooFew) {
            spec.commandLine().getErr().println(spec.qualifiedName() + ": no curve: " + tooFew.reason());
        }
        out.flush();
    }
}
