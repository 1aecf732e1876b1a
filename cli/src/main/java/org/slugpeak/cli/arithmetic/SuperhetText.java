package org.slugpeak.cli.arithmetic;

import java.util.List;
import java.util.Locale;
import org.slugpeak.cli.quantity.FrequencyText;
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
        Table table = new Table("dial", "oscillator", "image", "heard again at dial");
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
        StringBuilder text = new StringBuilder();
        for (GeneratorResponse each : found) {
            String harmonic = each.generatorHarmonic() == 1 ? "itself" : "times " + each.generatorHarmonic();
            text.append(String.format(
                    Locale.ROOT,
                    "%s: generator %s %s = %s falls on %s of dial %s%n",
                    each.isWanted() ? "wanted" : "FOOLS",
                    FrequencyText.of(generatorHz),
                    harmonic,
                    FrequencyText.of(each.generatorHarmonic() * generatorHz),
                    each.path().words(),
                    FrequencyText.of(dialHz)));
        }
        return text.isEmpty()
                ? "generator %s: neither it nor a harmonic up to the fifth is heard at dial %s"
                        .formatted(FrequencyText.of(generatorHz), FrequencyText.of(dialHz))
                : text.toString().stripTrailing();
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
        Table table = new Table("order", "m (oscillator)", "n (signal)", "signal", "");
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
            return "IF break-through";
        }
        if (response.order() != 2) {
            return "";
        }
        boolean wanted =
                Math.abs(response.signalHz() - dialHz) < Math.abs(response.signalHz() - receiver.imageHz(dialHz));
        return response.oscillatorHarmonic() == 0 ? "" : wanted ? "wanted" : "image";
    }

    /**
     * Parts of a tracking design.
     *
     * @param circuit the design
     * @return three lines
     */
    public static String parts(TrackingCircuit circuit) {
        return String.format(
                Locale.ROOT,
                "oscillator coil %8.2f uH%npadder          %8.1f pF%ntrimmer         %8.2f pF more than the signal circuit"
                        + " has",
                circuit.oscillatorCoilHenry() * 1e6,
                circuit.padderFarad() * 1e12,
                circuit.trimmerFarad() * 1e12);
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
        Table table = new Table("dial", "gang + strays", "oscillator", "error");
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
