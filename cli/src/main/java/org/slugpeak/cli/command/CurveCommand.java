package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.curve.CurveFile;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.curve.CurveGuide;
import org.slugpeak.cli.curve.CurveText;
import org.slugpeak.cli.curve.SignedCurveText;
import org.slugpeak.cli.feed.GeneratorMet;
import org.slugpeak.cli.feed.GeneratorSession;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.DialOptions;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.quantity.FrequencySpan;
import org.slugpeak.cli.words.CurvePhrase;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.curve.CurveTiming;
import org.slugpeak.core.curve.ResponseCurve;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.curve.SignedCurve;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code slugpeak curve}: response against generator frequency. */
@Command(name = "curve", mixinStandardHelpOptions = true)
public final class CurveCommand implements Callable<Integer> {

    private static final double LONGEST_DWELL_SECONDS = 600;
    private static final int MOST_POINTS = 2000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--from", paramLabel = "SOURCE")
    private Optional<String> from = Optional.empty();

    @Option(names = "--points", paramLabel = "FILE")
    private Optional<Path> points = Optional.empty();

    @Option(names = "--attenuation")
    private boolean attenuation;

    @Option(names = "--span", paramLabel = "F..F", converter = FrequencySpan.Converter.class)
    private Optional<FrequencySpan> span = Optional.empty();

    @Option(names = "--step", paramLabel = "F", converter = Frequency.class, defaultValue = "1kHz")
    private double stepHz;

    @Option(names = "--dwell", paramLabel = "S", defaultValue = "6")
    private double dwellSeconds;

    @Option(names = "--no-rest")
    private boolean withoutRest;

    @Option(names = "--centre", paramLabel = "F", converter = Frequency.class)
    private Optional<Double> centreHz = Optional.empty();

    @Option(names = "--law")
    private boolean law;

    @Option(names = "--skirts", paramLabel = "F", converter = Frequency.class)
    private Optional<Double> skirtsHz = Optional.empty();

    @Option(names = "--discriminator")
    private boolean discriminator;

    @Option(names = "--swing", paramLabel = "F", converter = Frequency.class)
    private Optional<Double> swingHz = Optional.empty();

    @Option(names = "--transformers", paramLabel = "N", defaultValue = "2")
    private int transformers;

    @Option(names = "--csv", paramLabel = "FILE")
    private Optional<Path> csv = Optional.empty();

    @Option(names = "--compare", paramLabel = "BEFORE")
    private Optional<Path> compare = Optional.empty();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Mixin
    private PageOptions page = new PageOptions();

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private GeneratorOptions generatorOptions = new GeneratorOptions();

    @Mixin
    private DialOptions dial = new DialOptions();

    @Override
    public Integer call() throws BridgeException {
        refuseWrongUsage();
        List<ResponsePoint> before =
                compare.isPresent() ? CurveFile.read(compare.get(), sourceOptions.decimalComma()) : List.of();
        if (points.isPresent()) {
            List<ResponsePoint> written = CurveFile.read(points.get(), sourceOptions.decimalComma());
            show(attenuation ? atConstantOutput(written) : written, before);
            return 0;
        }
        return measure(before);
    }

    /** What the attenuator has to take off for one and the same reading is the response, whatever the detector makes of its signal. */
    private static List<ResponsePoint> atConstantOutput(List<ResponsePoint> attenuationsDb) {
        return attenuationsDb.stream()
                .map(point -> new ResponsePoint(point.hz(), Decibels.ratio(point.level())))
                .toList();
    }

    private void refuseWrongUsage() {
        require(from.isPresent() || points.isPresent(), "say where readings come from (--from), or --points FILE");
        require(
                from.isEmpty() || points.isEmpty(),
                "--from measures the curve, --points FILE has one that is written: give one of the two; --span says where to measure");
        boolean text = points.isPresent() && !points.get().toString().endsWith(CurveFile.LOG);
        require(
                !attenuation || (text && !discriminator),
                "--attenuation goes with a text of --points: frequency in kHz, attenuation in dB");
        require(
                from.isPresent() || !generatorOptions.isGiven(),
                "--generator goes with readings (--from): points that are written already need none");
        require(
                from.isPresent() || !dial.isGiven(),
                "--generator-dial goes with readings (--from): points that are written already need none");
        require(from.isEmpty() || span.isPresent(), "say from where to where: --span 440..470");
        require(
                !(law && (discriminator || from.isEmpty())),
                "--law goes with readings (--from) of one sign, not with --discriminator");
        require(transformers >= 1 && transformers <= 6, "--transformers takes 1 to 6");
        require(
                dwellSeconds >= 0 && dwellSeconds <= LONGEST_DWELL_SECONDS,
                "--dwell takes 0 to " + (int) LONGEST_DWELL_SECONDS + " seconds");
        generatorOptions.refuseWrongUsage();
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
        CurveTiming timing = generatorOptions.isGiven() ? CurveTiming.automatic() : CurveTiming.byHand(dwellSeconds);
        SourceAddress address = new SourceAddress(from.orElseThrow());
        if (WayIn.of(address).has(WayIn.Trait.SIMULATED) && !SimSource.obeys(address.name())) {
            throw new BadConfiguration("a curve is measured while nobody turns a slug: --from sim:"
                    + SimSource.REHEARSAL + " as before the work, --from sim:" + SimSource.ALIGNED + " as after it");
        }
        List<Double> frequencies = span.orElseThrow().steps(stepHz);
        CurveProgress progress = new CurveProgress(frequencies, timing, checksFirst(), discriminator);
        double middle = (span.orElseThrow().lowHz() + span.orElseThrow().highHz()) / 2;
        GeneratorSession generator = new GeneratorSession(
                generatorOptions, OptionalDouble.empty(), reach -> GeneratorMet.refuseBeyond(reach, frequencies));
        generator.tune(centreHz.orElse(middle));
        boolean byHand = !generatorOptions.isGiven();
        List<Double> ends = List.of(frequencies.get(0), frequencies.get(frequencies.size() - 1));
        Optional<DialScale> marks =
                dial.scale(generatorOptions, ends, spec.commandLine().getErr());
        SessionParts parts = new SessionParts(
                address.text(),
                () -> WayIn.of(address).open(address, sourceOptions),
                source -> outputOptions.openCurve(page, byHand),
                AnalysisSettings.following(PeakSettings.defaults()),
                new CurveGuide(progress, byHand, marks));
        int exitCode;
        try {
            exitCode = generator.run(parts, spec.commandLine().getErr());
        } finally {
            show(progress, before);
        }
        if (exitCode == 0 && !progress.isOver()) {
            throw new BadInput("the curve is not complete: " + progress.index() + " of " + frequencies.size()
                    + " points were taken before the session ended");
        }
        return exitCode;
    }

    /** Where nothing was measured, why is told elsewhere. */
    private void show(CurveProgress progress, List<ResponsePoint> before) throws BridgeException {
        if (progress.points().isEmpty()) {
            return;
        }
        show(progress.points(), before);
        if (progress.droppedSigns()) {
            spec.commandLine().getErr().println(CurvePhrase.SIGNS_DROPPED.of());
        }
    }

    private List<CheckKind> checksFirst() throws BridgeException {
        List<CheckKind> checks = new ArrayList<>();
        if (!withoutRest) {
            checks.add(CheckKind.REST);
        }
        if (law || (generatorOptions.setsLevel() && !discriminator)) {
            checks.add(CheckKind.DETECTOR_LAW);
        }
        return checks;
    }

    private void show(List<ResponsePoint> measured, List<ResponsePoint> before) throws BadInput {
        PrintWriter out = outputOptions.isJson()
                ? spec.commandLine().getErr()
                : spec.commandLine().getOut();
        if (csv.isPresent() && !measured.isEmpty()) {
            CurveFile.write(csv.get(), measured);
        }
        try {
            describe(measured, before).forEach(out::println);
        } catch (Refused tooFew) {
            spec.commandLine().getErr().println(CurvePhrase.NO_CURVE.of(spec.qualifiedName(), tooFew.reason()));
        }
        out.flush();
    }

    private List<String> describe(List<ResponsePoint> measured, List<ResponsePoint> before) throws Refused {
        List<String> lines = new ArrayList<>();
        boolean signed = discriminator || SignedCurve.hasBothSigns(measured);
        if (signed) {
            SignedCurve curve = SignedCurve.through(measured);
            lines.addAll(SignedCurveText.describe(measured.size(), curve, optional(centreHz), optional(swingHz)));
        } else {
            ResponseCurve curve = ResponseCurve.through(measured);
            lines.addAll(CurveText.describe(curve, optional(centreHz), optional(skirtsHz), transformers));
        }
        if (!before.isEmpty()) {
            lines.add(compare(before, measured, signed));
        }
        return lines;
    }

    private static String compare(List<ResponsePoint> before, List<ResponsePoint> now, boolean signed) throws Refused {
        if (SignedCurve.hasBothSigns(before) != signed) {
            return CurvePhrase.NOT_COMPARED.of();
        }
        return signed
                ? SignedCurveText.compare(SignedCurve.through(before), SignedCurve.through(now))
                : CurveText.compare(ResponseCurve.through(before), ResponseCurve.through(now));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
