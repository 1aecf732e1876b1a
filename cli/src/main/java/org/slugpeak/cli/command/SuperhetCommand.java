package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.slugpeak.cli.arithmetic.Formula;
import org.slugpeak.cli.arithmetic.SuperhetText;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.quantity.FrequencyText;
import org.slugpeak.cli.quantity.Inductance;
import org.slugpeak.cli.quantity.Length;
import org.slugpeak.cli.quantity.Power;
import org.slugpeak.cli.quantity.Resistance;
import org.slugpeak.cli.quantity.Significant;
import org.slugpeak.cli.quantity.Voltage;
import org.slugpeak.cli.words.SuperhetPhrase;
import org.slugpeak.core.receiver.ImageRatio;
import org.slugpeak.core.receiver.LoopField;
import org.slugpeak.core.receiver.MeterLoading;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.receiver.Superhet;
import org.slugpeak.core.receiver.TrackingCircuit;
import org.slugpeak.core.receiver.TrackingPoints;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code slugpeak superhet}: the arithmetic beside the bench. */
@Command(name = "superhet", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "QUESTION")
public final class SuperhetCommand implements Runnable {

    private static final int TRACKING_ROWS = 12;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** What every question about frequencies needs. */
    static final class Receiver {
        @Option(names = "--if", converter = Frequency.class, defaultValue = "455", paramLabel = "F")
        private double intermediateHz;

        @Option(names = "--below")
        private boolean below;

        Superhet superhet() {
            return new Superhet(intermediateHz, below ? OscillatorSide.BELOW : OscillatorSide.ABOVE);
        }
    }

    /** Shows the formula behind an answer. */
    static final class Explain {
        @Option(names = "--explain")
        private boolean wanted;

        void print(PrintWriter out, Formula... formulas) {
            if (wanted) {
                for (Formula each : formulas) {
                    out.println();
                    out.println(each.explanation());
                }
            }
        }
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "ask one of: tune, responses, track, image, loop, loading, power");
    }

    @Command(mixinStandardHelpOptions = true, name = "tune")
    int tune(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(names = "--dial", split = ",", required = true, converter = Frequency.class, paramLabel = "F")
                    double[] dialsHz,
            @Option(names = "--generator", converter = Frequency.class, paramLabel = "F") @Nullable Double generatorHz,
            @Option(names = "--near", converter = Frequency.class, defaultValue = "10", paramLabel = "F")
                    double nearHz) {
        PrintWriter out = out();
        Superhet superhet = receiver.superhet();
        out.println(SuperhetText.frequencies(superhet, dialsHz));
        for (double dial : dialsHz) {
            superhet.intermediateHarmonicsWithin(dial - nearHz, dial + nearHz)
                    .forEach(whistle ->
                            out.println(SuperhetPhrase.AVOID.of(FrequencyText.of(dial), FrequencyText.of(whistle))));
            if (generatorHz != null) {
                out.println(SuperhetText.generator(
                        superhet.generatorResponses(generatorHz, dial, nearHz), generatorHz, dial));
            }
        }
        explain.print(out, Formula.SUPERHET, Formula.HARMONICS);
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, name = "responses")
    int responses(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(names = "--dial", required = true, converter = Frequency.class, paramLabel = "F") double dialHz,
            @Option(names = "--order", defaultValue = "5", paramLabel = "N") int order) {
        PrintWriter out = out();
        Superhet superhet = receiver.superhet();
        out.println(SuperhetText.responses(
                superhet.responses(dialHz).stream()
                        .filter(each -> each.order() <= order)
                        .toList(),
                superhet,
                dialHz));
        explain.print(out, Formula.RESPONSES);
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, name = "track")
    int track(
            @Mixin Explain explain,
            @Option(names = "--if", converter = Frequency.class, defaultValue = "455", paramLabel = "F")
                    double intermediateHz,
            @Option(names = "--coil", required = true, converter = Inductance.class, paramLabel = "L") double coilHenry,
            @Option(
                            names = "--at",
                            arity = "1",
                            split = ",",
                            defaultValue = "600,1000,1400",
                            converter = Frequency.class,
                            paramLabel = "F")
                    double[] pointsHz,
            @Option(
                            names = "--band",
                            split = ",",
                            defaultValue = "540,1600",
                            converter = Frequency.class,
                            paramLabel = "F")
                    double[] bandHz) {
        PrintWriter out = out();
        double[] dialsHz = dials(pointsHz, bandHz);
        TrackingCircuit circuit = TrackingCircuit.exactAt(coilHenry, intermediateHz, points(pointsHz));
        out.println(SuperhetText.parts(circuit));
        out.println();
        out.println(SuperhetText.trackingErrors(circuit, intermediateHz, dialsHz));
        explain.print(out, Formula.TRACKING);
        return 0;
    }

    private TrackingPoints points(double[] hz) {
        if (hz.length != 3 || !(hz[0] < hz[1] && hz[1] < hz[2])) {
            throw new ParameterException(
                    spec.commandLine(), "--at takes three frequencies, lowest first: 600,1000,1400");
        }
        return new TrackingPoints(hz[0], hz[1], hz[2]);
    }

    private double[] dials(double[] pointsHz, double[] bandHz) {
        if (bandHz.length != 2 || !(bandHz[0] < bandHz[1])) {
            throw new ParameterException(spec.commandLine(), "--band takes the two ends, lower first: 540,1600");
        }
        double step = (bandHz[1] - bandHz[0]) / (TRACKING_ROWS - 1);
        DoubleStream raster = DoubleStream.iterate(bandHz[0], hz -> hz + step).limit(TRACKING_ROWS);
        return DoubleStream.concat(raster, DoubleStream.of(pointsHz))
                .sorted()
                .distinct()
                .toArray();
    }

    @Command(mixinStandardHelpOptions = true, name = "image")
    int image(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(names = "--dial", split = ",", required = true, converter = Frequency.class, paramLabel = "F")
                    double[] dialsHz,
            @Option(names = "--q", split = ",", required = true, paramLabel = "Q") double[] qs) {
        PrintWriter out = out();
        for (double dial : dialsHz) {
            out.println(SuperhetPhrase.IMAGE_DOWN.of(
                    FrequencyText.of(dial),
                    FrequencyText.of(receiver.superhet().imageHz(dial)),
                    ImageRatio.imageRatioDb(receiver.superhet(), dial, qs)));
        }
        explain.print(out, Formula.IMAGE_RATIO);
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, name = "loop")
    int loop(
            @Mixin Explain explain,
            @Option(names = "--turns", required = true) double turns,
            @Option(names = "--diameter", required = true, converter = Length.class, paramLabel = "D")
                    double diameterMetres,
            @Option(names = "--distance", required = true, converter = Length.class, paramLabel = "D")
                    double distanceMetres,
            @Option(names = "--emf", required = true, converter = Voltage.class, paramLabel = "V") double emfVolts,
            @Option(names = "--resistance", required = true, converter = Resistance.class, paramLabel = "R")
                    double ohms,
            @Option(names = "--inductance", converter = Inductance.class, paramLabel = "L") @Nullable Double henry,
            @Option(names = "--at", converter = Frequency.class, defaultValue = "1000", paramLabel = "F") double hz) {
        PrintWriter out = out();
        LoopField field = new LoopField(turns, diameterMetres / 2, distanceMetres);
        double current = LoopField.currentAmperes(emfVolts, ohms, henry == null ? 0 : henry, hz);
        double voltsPerMetre = field.coaxialVoltsPerMetre(current);
        out.println(SuperhetPhrase.FIELD.of(voltsPerMetre * 1e6, voltsPerMetre / 2 * 1e6));
        if (!field.isFarEnough(diameterMetres) || !field.isNearField(hz)) {
            out.println(SuperhetPhrase.CHECK_FIELD.of());
        }
        explain.print(out, Formula.LOOP);
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, name = "loading")
    int loading(
            @Mixin Explain explain,
            @Option(names = "--source", required = true, converter = Resistance.class, paramLabel = "R")
                    double sourceOhms,
            @Option(names = "--meter", required = true, converter = Resistance.class, paramLabel = "R")
                    double meterOhms,
            @Option(names = "--shown", converter = Voltage.class, paramLabel = "V") @Nullable Double shownVolts) {
        PrintWriter out = out();
        out.println(SuperhetPhrase.READS_LOW.of(
                -MeterLoading.errorDb(sourceOhms, meterOhms),
                100 * (1 - MeterLoading.shownFraction(sourceOhms, meterOhms))));
        if (shownVolts != null) {
            out.println(SuperhetPhrase.WITHOUT_METER.of(
                    Significant.four(MeterLoading.unloadedVolts(shownVolts, sourceOhms, meterOhms))));
        }
        out.println(SuperhetPhrase.CONSTANT_ERROR.of());
        explain.print(out, Formula.LOADING);
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, name = "power")
    int power(
            @Mixin Explain explain,
            @Option(names = "--load", required = true, converter = Resistance.class, paramLabel = "R") double ohms,
            @Option(names = "--volts", converter = Voltage.class, paramLabel = "V") @Nullable Double volts,
            @Option(names = "--power", converter = Power.class, defaultValue = "50mW", paramLabel = "P") double watts) {
        PrintWriter out = out();
        if (volts == null) {
            out.println(SuperhetPhrase.VOLTS.of(
                    Significant.four(watts * 1e3), Significant.four(ohms), OutputPower.volts(watts, ohms)));
        } else {
            out.println(SuperhetPhrase.POWER.of(
                    volts, Significant.four(ohms), Significant.four(OutputPower.watts(volts, ohms) * 1e3)));
        }
        explain.print(out, Formula.POWER);
        return 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
