package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One kind of disturbance, by itself but for a quiet meter's own white noise where it would have none.
 *
 * @param name a few words; amplitudes are parts of the top
 * @param maker makes it
 */
record Kind(String name, Disturbance.Maker maker) {

    /** A quiet meter. */
    private static final double QUIET = 0.0005;

    /** Every kind; new ones go to the end, since the place of a kind is in its seeds. */
    static List<Kind> all() {
        List<Kind> kinds = new ArrayList<>();
        for (double sigma : new double[] {0.0005, 0.0035, 0.02}) {
            kinds.add(new Kind(name("white %.2f %%", 100 * sigma), Disturbance.white(sigma)));
        }
        for (double sigma : new double[] {0.0005, 0.001, 0.002, 0.004}) {
            kinds.add(new Kind(name("1/f %.2f %% an octave", 100 * sigma), Flicker.ofOctave(sigma)));
        }
        for (double part : new double[] {0.003, 0.01}) {
            for (double hertz : new double[] {50, 60}) {
                kinds.add(new Kind(name("hum %.1f %% %.0f Hz", 100 * part, hertz), quiet(Mains.of(part, hertz))));
            }
        }
        for (double part : new double[] {0.005, 0.01, 0.02, 0.03}) {
            for (double hertz : new double[] {0.1, 0.3, 1, 3, 5}) {
                String beat = name("beat %.1f %% %.1f Hz", 100 * part, hertz);
                kinds.add(new Kind(beat, quiet(Disturbance.beat(part, hertz))));
            }
        }
        kinds.add(new Kind("popcorn 0.3 %", quiet(Popcorn.of(0.003))));
        for (double digit : new double[] {0.001, 0.003, 0.01}) {
            kinds.add(new Kind(name("digit %.1f %%", 100 * digit), Disturbance.lastDigit(digit)));
        }
        kinds.add(new Kind("spikes 0.5 %", Disturbance.spikes(0.005, Disturbance.white(0.0035))));
        return kinds;
    }

    private static Disturbance.Maker quiet(Disturbance.Maker maker) {
        return Disturbance.both(maker, Disturbance.white(QUIET));
    }

    private static String name(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
