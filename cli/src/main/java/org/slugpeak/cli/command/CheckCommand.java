package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.generator.DescribedGenerator;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.LinkBounds;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.HumRejection;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.LinkReport;
import org.slugpeak.bridge.source.LinkStatistics;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.check.GeneratorCheck;
import org.slugpeak.cli.check.LinkEar;
import org.slugpeak.cli.check.LinkReportText;
import org.slugpeak.cli.check.SoundCheck;
import org.slugpeak.cli.check.SourceText;
import org.slugpeak.cli.check.UnderstandingText;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.open.WayIn.Trait;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.run.Interruption;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Is the link sound. */
@Command(name = "check", mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {

    private static final long WAIT_NANOS = 50_000_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--from", paramLabel = "SOURCE")
    private String from = "";

    @Option(names = "--seconds", paramLabel = "SECONDS")
    private double seconds = 10;

    @Option(names = "--volts", paramLabel = "VOLTS")
    private double volts = Double.NaN;

    @Option(names = "--hum", paramLabel = "VOLTS")
    private Optional<Double> hum = Optional.empty();

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private GeneratorOptions generatorOptions = new GeneratorOptions();

    @Override
    public Integer call() throws BridgeException {
        if (!(seconds >= 1 && seconds <= 3600)) {
            throw new TypeConversionException("--seconds takes 1 to 3600, not " + seconds);
        }
        if (hum.isPresent() && !(hum.get() > 0 && Double.isFinite(hum.get()))) {
            throw new TypeConversionException(
                    "--hum takes the volts of hum on the input, more than 0, not " + hum.get());
        }
        generatorOptions.refuseWrongUsage();
        if (from.isEmpty() != generatorOptions.isGiven()) {
            throw new ParameterException(
                    spec.commandLine(), "say what is to be checked: --from SOURCE, or --generator ADDRESS");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (generatorOptions.isGiven()) {
            return checkGenerator(out);
        }
        SourceAddress address = new SourceAddress(from);
        WayIn way = WayIn.of(address);
        if (!Double.isNaN(volts)) {
            if (!way.has(Trait.AUDIO) || way.has(Trait.RECORDED)) {
                throw new BadConfiguration("--volts calibrates a sound input; " + from + " is none");
            }
            new SoundCheck(address, sourceOptions.sound()).calibrate(volts, out);
            return 0;
        }
        ReadingSource source = way.open(address, sourceOptions).source();
        try {
            LinkEar ear = listen(source);
            return Interruption.isRequested() ? Interruption.EXIT_CODE : report(source, ear, out);
        } finally {
            source.close();
        }
    }

    private int checkGenerator(PrintWriter out) throws BridgeException {
        Interruption.takeCare();
        DescribedGenerator generator = generatorOptions.open();
        Optional<String> unsure = Optional.empty();
        try {
            GeneratorCheck.look(generator, generatorOptions.kind()).forEach(out::println);
        } finally {
            unsure = generator.leave();
        }
        out.flush();
        unsure.ifPresent(spec.commandLine().getErr()::println);
        return Interruption.isRequested() ? Interruption.EXIT_CODE : 0;
    }

    private LinkEar listen(ReadingSource source) throws BridgeException {
        LinkEar ear = new LinkEar(new LinkStatistics(scaleSpan(source)), hum.map(HumRejection::new));
        Ticker ticker = Ticker.system();
        long endNanos = ticker.nowNanos() + Math.round(seconds * 1e9);
        Progress progress = Progress.MORE;
        while (progress != Progress.ENDED && !Interruption.isRequested() && ticker.nowNanos() < endNanos) {
            progress = source.poll(WAIT_NANOS, ear);
        }
        return ear;
    }

    private static OptionalDouble scaleSpan(ReadingSource source) {
        return source instanceof InstrumentSource instrument ? instrument.scaleSpan() : OptionalDouble.empty();
    }

    private LinkBounds bounds() throws BadConfiguration {
        Optional<String> meter = sourceOptions.serial().meter();
        return meter.isPresent() ? Instruments.create().find(meter.get()).bounds() : LinkBounds.NONE;
    }

    private int report(ReadingSource source, LinkEar ear, PrintWriter out) throws BadInput, BadConfiguration {
        LinkReport report = ear.report();
        if (report.readings() == 0) {
            throw new BadInput(from + ": not one reading in " + Math.round(seconds)
                    + " s; is the instrument switched on and sending?");
        }
        out.println(source.description().match(new SourceText()));
        source.understanding().map(UnderstandingText::new).map(UnderstandingText::lines).stream()
                .flatMap(List::stream)
                .forEach(line -> out.println("  " + line));
        new LinkReportText(
                        report,
                        ear.humRejectionDb(),
                        bounds(),
                        source.measurand().unit())
                .lines()
                .forEach(line -> out.println("  " + line));
        out.flush();
        return 0;
    }
}
