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
@Command(
        name = "superhet",
        mixinStandardHelpOptions = true,
        header = SuperhetCommand.HEADER,
        footer = {
            "",
            "Examples:",
            "  slugpeak superhet tune --if 455 --dial 600,1000,1400 --generator 700",
            "  slugpeak superhet track --coil 220 --at 600,1000,1400 --explain",
            "  slugpeak superhet power --load 3.2"
        },
        description =
                "Superhet arithmetic: oscillator, image, harmonics that fool, tracking, levels. Frequencies are in"
                        + " kHz unless a unit is given (455, 10.7MHz).",
        synopsisSubcommandLabel = "QUESTION")
public final class SuperhetCommand implements Runnable {

    /** What it does, in a line of the list of commands. */
    public static final String HEADER = "Superhet arithmetic beside the bench, with its formulas (--explain).";

    private static final int TRACKING_ROWS = 12;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** What every question about frequencies needs. */
    static final class Receiver {
        @Option(
                names = "--if",
                converter = Frequency.class,
                defaultValue = "455",
                paramLabel = "F",
                description = "intermediate frequency; the set's own figure counts (default: ${DEFAULT-VALUE} kHz)")
        private double intermediateHz;

        @Option(names = "--below", description = "the oscillator runs below the signal")
        private boolean below;

        Superhet superhet() {
            return new Superhet(intermediateHz, below ? OscillatorSide.BELOW : OscillatorSide.ABOVE);
        }
    }

    /** Shows the formula behind an answer. */
    static final class Explain {
        @Option(names = "--explain", description = "show the formula, its units and its source")
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "tune",
            description = "Oscillator and image of dial points; which harmonics fool a generator.")
    int tune(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(
                            names = "--dial",
                            split = ",",
                            required = true,
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "dial points, for example 600,1000,1400")
                    double[] dialsHz,
            @Option(
                            names = "--generator",
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "what the generator is set to: is it, or a harmonic of it, heard there?")
                    @Nullable
                    Double generatorHz,
            @Option(
                            names = "--near",
                            converter = Frequency.class,
                            defaultValue = "10",
                            paramLabel = "F",
                            description = "how near counts as heard (default: ${DEFAULT-VALUE} kHz)")
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "responses",
            description = "Every signal that mixes to the IF at one dial setting, up to the fifth harmonic.")
    int responses(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(
                            names = "--dial",
                            required = true,
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "dial setting")
                    double dialHz,
            @Option(
                            names = "--order",
                            defaultValue = "5",
                            paramLabel = "N",
                            description = "highest order m + n to show, 1 to 10 (default: ${DEFAULT-VALUE})")
                    int order) {
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "track",
            description = "Oscillator coil, padder and trimmer for exact tracking at three points, oscillator above.")
    int track(
            @Mixin Explain explain,
            @Option(
                            names = "--if",
                            converter = Frequency.class,
                            defaultValue = "455",
                            paramLabel = "F",
                            description = "intermediate frequency (default: ${DEFAULT-VALUE} kHz)")
                    double intermediateHz,
            @Option(
                            names = "--coil",
                            required = true,
                            converter = Inductance.class,
                            paramLabel = "L",
                            description = "signal coil, uH")
                    double coilHenry,
            @Option(
                            names = "--at",
                            arity = "1",
                            split = ",",
                            defaultValue = "600,1000,1400",
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "the three points (default: ${DEFAULT-VALUE})")
                    double[] pointsHz,
            @Option(
                            names = "--band",
                            split = ",",
                            defaultValue = "540,1600",
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "ends of the error table (default: ${DEFAULT-VALUE})")
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "image",
            description = "Image ratio from the Q of the tuned circuits before the mixer.")
    int image(
            @Mixin Receiver receiver,
            @Mixin Explain explain,
            @Option(
                            names = "--dial",
                            split = ",",
                            required = true,
                            converter = Frequency.class,
                            paramLabel = "F",
                            description = "dial points")
                    double[] dialsHz,
            @Option(
                            names = "--q",
                            split = ",",
                            required = true,
                            paramLabel = "Q",
                            description = "loaded Q of each tuned circuit, for example 80 or 80,60")
                    double[] qs) {
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "loop",
            description = "Field strength at a set's loop from a coil on the generator.")
    int loop(
            @Mixin Explain explain,
            @Option(names = "--turns", required = true, description = "turns of the coil") double turns,
            @Option(
                            names = "--diameter",
                            required = true,
                            converter = Length.class,
                            paramLabel = "D",
                            description = "of the coil, cm")
                    double diameterMetres,
            @Option(
                            names = "--distance",
                            required = true,
                            converter = Length.class,
                            paramLabel = "D",
                            description = "coil to loop, cm")
                    double distanceMetres,
            @Option(
                            names = "--emf",
                            required = true,
                            converter = Voltage.class,
                            paramLabel = "V",
                            description = "open-circuit voltage of the generator")
                    double emfVolts,
            @Option(
                            names = "--resistance",
                            required = true,
                            converter = Resistance.class,
                            paramLabel = "R",
                            description = "generator and series resistor together, ohm")
                    double ohms,
            @Option(
                            names = "--inductance",
                            converter = Inductance.class,
                            paramLabel = "L",
                            description = "of the coil, uH; left out where not given")
                    @Nullable
                    Double henry,
            @Option(
                            names = "--at",
                            converter = Frequency.class,
                            defaultValue = "1000",
                            paramLabel = "F",
                            description = "frequency (default: ${DEFAULT-VALUE} kHz)")
                    double hz) {
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "loading",
            description = "What the meter's resistance takes away from a high-resistance point.")
    int loading(
            @Mixin Explain explain,
            @Option(
                            names = "--source",
                            required = true,
                            converter = Resistance.class,
                            paramLabel = "R",
                            description = "resistance of the point, for example 500k")
                    double sourceOhms,
            @Option(
                            names = "--meter",
                            required = true,
                            converter = Resistance.class,
                            paramLabel = "R",
                            description = "resistance of the meter, for example 10M")
                    double meterOhms,
            @Option(
                            names = "--shown",
                            converter = Voltage.class,
                            paramLabel = "V",
                            description = "what the meter shows: gives the voltage without it")
                    @Nullable
                    Double shownVolts) {
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

    @Command(
            mixinStandardHelpOptions = true,
            name = "power",
            description = "Volts across the speaker for a power, or the power of a voltage.")
    int power(
            @Mixin Explain explain,
            @Option(
                            names = "--load",
                            required = true,
                            converter = Resistance.class,
                            paramLabel = "R",
                            description = "load, ohm")
                    double ohms,
            @Option(
                            names = "--volts",
                            converter = Voltage.class,
                            paramLabel = "V",
                            description = "across the load, RMS")
                    @Nullable
                    Double volts,
            @Option(
                            names = "--power",
                            converter = Power.class,
                            defaultValue = "50mW",
                            paramLabel = "P",
                            description =
                                    "output power (default: ${DEFAULT-VALUE}, for sets of 0.1 to 1 W; 500mW for larger ones, 5mW for smaller)")
                    double watts) {
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
