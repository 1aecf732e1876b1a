package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slugpeak.bridge.scale.PointFile;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.cli.arithmetic.ScaleText;
import org.slugpeak.cli.quantity.DialBeat;
import org.slugpeak.cli.quantity.DialPoint;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.quantity.FrequencyList;
import org.slugpeak.cli.quantity.LowEnd;
import org.slugpeak.cli.scale.DialLog;
import org.slugpeak.core.scale.CalibrationLine;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.scale.LowEndPart;
import org.slugpeak.core.scale.ReceiverDial;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** {@code slugpeak scale}: corrects dials from known points. */
@Command(name = "scale", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "(generator | receiver)")
public final class ScaleCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say whose dial: scale generator, or scale receiver");
    }

    @Command(mixinStandardHelpOptions = true, name = "generator")
    int generator(
            @Option(names = "--point", paramLabel = "DIAL:TRUE") @Nullable List<String> typed,
            @Option(names = "--beat", paramLabel = "DIAL:CARRIER:PITCH:high|low[:HARMONIC]") @Nullable
                    List<String> beats,
            @Option(names = "--points", paramLabel = "FILE") @Nullable Path file,
            @Option(names = "--decimal-comma") boolean decimalComma,
            @Option(names = "--save", paramLabel = "FILE") @Nullable Path save,
            @Option(
                            names = "--known-to",
                            converter = Frequency.class,
                            defaultValue = ScaleText.USUAL_KNOWN_TO,
                            paramLabel = "F")
                    double knownToHz,
            @Option(
                            names = "--read-to",
                            converter = Frequency.class,
                            defaultValue = ScaleText.USUAL_READ_TO,
                            paramLabel = "F")
                    double readToHz,
            @Option(names = "--get", paramLabel = "F") @Nullable List<String> wanted,
            @Option(names = "--dial", paramLabel = "F") @Nullable List<String> dials,
            @Option(names = "--table", converter = Frequency.class, paramLabel = "STEP") @Nullable Double stepHz)
            throws BadInput {
        List<KnownPoint> points = gather(typed, beats, file, knownToHz, decimalComma);
        DialScale scale = scale(points, readToHz);
        List<Double> wantedHz = frequencies("--get", wanted, decimalComma);
        List<Double> dialsHz = frequencies("--dial", dials, decimalComma);
        refuseOutside(scale, wantedHz, dialsHz);
        PrintWriter out = spec.commandLine().getOut();
        out.println(ScaleText.points(scale.points()));
        if (points.size() >= 3) {
            out.println(ScaleText.line(CalibrationLine.ofCorrections(scale.points())));
        }
        if (stepHz != null) {
            out.println();
            out.println(ScaleText.corrections(scale, stepHz));
        }
        for (double dial : dialsHz) {
            scale.trueAt(dial).ifPresent(it -> out.println(ScaleText.reading(dial, it)));
        }
        for (double hz : wantedHz) {
            scale.dialFor(hz).ifPresent(it -> out.println(ScaleText.setting(hz, it)));
        }
        if (save != null) {
            PointFile.write(save, scale.points());
        }
        return 0;
    }

    private List<KnownPoint> gather(
            @Nullable List<String> typed,
            @Nullable List<String> beats,
            @Nullable Path file,
            double knownToHz,
            boolean decimalComma)
            throws BadInput {
        List<KnownPoint> points = new ArrayList<>();
        if (file != null) {
            points.addAll(PointFile.read(file, knownToHz, decimalComma));
        }
        if (typed != null) {
            points.addAll(known(typed, decimalComma, knownToHz));
        }
        if (beats != null) {
            points.addAll(heard(beats, decimalComma, knownToHz));
        }
        return points;
    }

    private List<KnownPoint> heard(List<String> beats, boolean decimalComma, double knownToHz) {
        return typed(
                "--beat",
                () -> beats.stream()
                        .map(text -> DialBeat.parse(text, decimalComma))
                        .map(each -> each.note().at(each.dialHz(), knownToHz))
                        .toList());
    }

    private List<Double> frequencies(String option, @Nullable List<String> lists, boolean decimalComma) {
        return lists == null ? List.of() : typed(option, () -> FrequencyList.parse(lists, decimalComma));
    }

    /** What was typed behind an option that is read only when all options are known. */
    private <T> T typed(String option, Supplier<T> reader) {
        try {
            return reader.get();
        } catch (TypeConversionException e) {
            throw new ParameterException(spec.commandLine(), option + ": " + e.getMessage(), e);
        }
    }

    private List<KnownPoint> known(List<String> points, boolean decimalComma, double knownToHz) {
        return typed(
                "--point",
                () -> points.stream()
                        .map(text -> DialPoint.parse(text, decimalComma))
                        .map(each -> new KnownPoint(each.dialHz(), each.trueHz(), knownToHz))
                        .toList());
    }

    private DialScale scale(List<KnownPoint> points, double readToHz) {
        try {
            return DialScale.through(points, readToHz);
        } catch (Refused e) {
            throw new ParameterException(spec.commandLine(), e.reason(), e);
        }
    }

    private void refuseOutside(DialScale scale, List<Double> wantedHz, List<Double> dialsHz) {
        KnownPoint first = scale.points().get(0);
        KnownPoint last = scale.points().get(scale.points().size() - 1);
        for (double wanted : wantedHz) {
            if (scale.dialFor(wanted).isEmpty()) {
                throw new ParameterException(
                        spec.commandLine(), ScaleText.outsideOfTrue(wanted, first.trueHz(), last.trueHz()));
            }
        }
        for (double dial : dialsHz) {
            if (scale.trueAt(dial).isEmpty()) {
                throw new ParameterException(
                        spec.commandLine(), ScaleText.outsideOfDial(dial, first.dialHz(), last.dialHz()));
            }
        }
    }

    @Command(mixinStandardHelpOptions = true, name = "receiver")
    int receiver(
            @Option(names = "--if", converter = Frequency.class, defaultValue = "455", paramLabel = "F")
                    double intermediateHz,
            @Option(names = "--point", required = true, paramLabel = "DIAL:TRUE") List<String> typed,
            @Option(names = "--decimal-comma") boolean decimalComma,
            @Option(names = "--low-end", converter = LowEnd.class, defaultValue = "padder", paramLabel = "PART")
                    LowEndPart lowEnd,
            @Option(names = "--tolerance", defaultValue = "0.5", paramLabel = "PERCENT") double percent,
            @Option(names = "--log", paramLabel = "FILE") @Nullable Path log,
            @Option(names = "--after") boolean after)
            throws BadLog {
        if (after && log == null) {
            throw new ParameterException(spec.commandLine(), "--after says how --log FILE is meant: give both");
        }
        ReceiverDial dial = receiverDial(known(typed, decimalComma, 0), intermediateHz, lowEnd);
        if (!(percent > 0 && percent <= 5)) {
            throw new ParameterException(spec.commandLine(), "--tolerance is above 0 and at most 5 per cent");
        }
        List<KnownPoint> points = List.of(dial.low(), dial.middle(), dial.high());
        boolean kept = log == null
                || DialLog.write(log, points, after, spec.commandLine().getErr());
        PrintWriter out = spec.commandLine().getOut();
        out.println(ScaleText.points(points));
        out.println(ScaleText.advice(dial.advice(percent / 100)));
        return kept ? 0 : 1;
    }

    private ReceiverDial receiverDial(List<KnownPoint> typed, double intermediateHz, LowEndPart lowEnd) {
        if (typed.size() != 3) {
            throw new ParameterException(spec.commandLine(), "give three points: low end, middle and high end");
        }
        List<KnownPoint> points = scale(typed, 0).points();
        return new ReceiverDial(intermediateHz, points.get(0), points.get(1), points.get(2), lowEnd);
    }
}
