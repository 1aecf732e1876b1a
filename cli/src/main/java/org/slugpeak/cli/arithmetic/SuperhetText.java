package org.slugpeak.cli.arithmetic;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slugpeak.cli.quantity.FrequencyText;
import org.slugpeak.cli.words.SuperhetPhrase;
import org.slugpeak.core.receiver.GeneratorResponse;
import org.slugpeak.core.receiver.MixingResponse;
import org.slugpeak.core.receiver.Superhet;
import org.slugpeak.core.receiver.TrackingCircuit;

/** Words and tables of {@code slugpeak superhet}. */
public final class SuperhetText {

    private SuperhetText() {}

    /**
     * Oscillator and image of dial points.
     *
     * @param receiver what is computed
     * @param dialsHz dial points, Hz
     * @return a table
     */
    public static String frequencies(Superhet receiver, double[] dialsHz) {
        Table table = new Table(
                SuperhetPhrase.DIAL.of(),
                SuperhetPhrase.OSCILLATOR.of(),
                SuperhetPhrase.IMAGE.of(),
                SuperhetPhrase.HEARD_AGAIN.of());
        for (double dial : dialsHz) {
            table.row(
                    FrequencyText.of(dial),
                    existing(receiver.oscillatorHz(dial)),
                    existing(receiver.imageHz(dial)),
                    existing(receiver.imageDialHz(dial)));
        }
        return table.text();
    }

    private static String existing(double hz) {
        return hz > 0 ? FrequencyText.of(hz) : "-";
    }

    /**
     * Where a generator's harmonics are heard.
     *
     * @param found what comes through
     * @param generatorHz generator, Hz
     * @param dialHz dial, Hz
     * @return one line for each, or one that says that nothing fools
     */
    public static String generator(List<GeneratorResponse> found, double generatorHz, double dialHz) {
        String generator = FrequencyText.of(generatorHz);
        String dial = FrequencyText.of(dialHz);
        return found.isEmpty()
                ? SuperhetPhrase.NOT_HEARD.of(generator, dial)
                : found.stream()
                        .map(each -> (each.isWanted() ? SuperhetPhrase.WANTED : SuperhetPhrase.FOOLS)
                                .of(
                                        generator,
                                        harmonic(each.generatorHarmonic()),
                                        FrequencyText.of(each.generatorHarmonic() * generatorHz),
                                        way(each.path()),
                                        dial))
                        .collect(Collectors.joining(System.lineSeparator()));
    }

    private static String harmonic(int number) {
        return number == 1 ? SuperhetPhrase.ITSELF.of() : SuperhetPhrase.TIMES.of(number);
    }

    private static String way(GeneratorResponse.Path path) {
        return switch (path) {
            case SIGNAL -> SuperhetPhrase.ON_SIGNAL.of();
            case IMAGE -> SuperhetPhrase.ON_IMAGE.of();
            case INTERMEDIATE -> SuperhetPhrase.ON_INTERMEDIATE.of();
        };
    }

    /**
     * Mixing products.
     *
     * @param responses what is heard
     * @param receiver to name signal and image
     * @param dialHz dial, Hz
     * @return a table
     */
    public static String responses(List<MixingResponse> responses, Superhet receiver, double dialHz) {
        Table table = new Table(
                SuperhetPhrase.ORDER.of(),
                SuperhetPhrase.M.of(),
                SuperhetPhrase.N.of(),
                SuperhetPhrase.SIGNAL.of(),
                "");
        for (MixingResponse each : responses) {
            table.row(
                    Integer.toString(each.order()),
                    Integer.toString(each.oscillatorHarmonic()),
                    Integer.toString(each.signalHarmonic()),
                    FrequencyText.of(each.signalHz()),
                    name(each, receiver, dialHz));
        }
        return table.text();
    }

    private static String name(MixingResponse response, Superhet receiver, double dialHz) {
        if (response.oscillatorHarmonic() == 0 && response.signalHarmonic() == 1) {
            return SuperhetPhrase.BREAK_THROUGH.of();
        }
        if (response.order() != 2) {
            return "";
        }
        boolean wanted =
                Math.abs(response.signalHz() - dialHz) < Math.abs(response.signalHz() - receiver.imageHz(dialHz));
        if (response.oscillatorHarmonic() == 0) {
            return "";
        }
        return (wanted ? SuperhetPhrase.IS_WANTED : SuperhetPhrase.IS_IMAGE).of();
    }

    /**
     * Parts of a tracking design.
     *
     * @param circuit the design
     * @return three lines
     */
    public static String parts(TrackingCircuit circuit) {
        return String.join(
                System.lineSeparator(),
                SuperhetPhrase.COIL.of(circuit.oscillatorCoilHenry() * 1e6),
                SuperhetPhrase.PADDER.of(circuit.padderFarad() * 1e12),
                SuperhetPhrase.TRIMMER.of(circuit.trimmerFarad() * 1e12));
    }

    /**
     * Tracking errors across a band.
     *
     * @param circuit the design
     * @param intermediateHz intermediate frequency, Hz
     * @param dialsHz where, Hz
     * @return a table
     */
    public static String trackingErrors(TrackingCircuit circuit, double intermediateHz, double[] dialsHz) {
        Table table = new Table(
                SuperhetPhrase.DIAL.of(),
                SuperhetPhrase.GANG.of(),
                SuperhetPhrase.OSCILLATOR.of(),
                SuperhetPhrase.ERROR.of());
        for (double dial : dialsHz) {
            double gang = circuit.gangFarad(dial);
            table.row(
                    FrequencyText.of(dial),
                    String.format(Locale.ROOT, "%.1f pF", gang * 1e12),
                    FrequencyText.of(circuit.oscillatorHz(gang)),
                    String.format(Locale.ROOT, "%+.1f kHz", roundedKhz(circuit.errorHz(dial, intermediateHz))));
        }
        return table.text();
    }

    /** To 0.1 kHz, and zero without a minus sign. */
    private static double roundedKhz(double hz) {
        return Math.rint(hz / 100) / 10 + 0.0;
    }
}
