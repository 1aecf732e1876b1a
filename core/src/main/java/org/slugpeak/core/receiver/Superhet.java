package org.slugpeak.core.receiver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The frequencies of a superheterodyne receiver; an intermediate frequency that is not positive is refused with an
 * {@link IllegalArgumentException}. Source: Terman, Radio Engineers' Handbook, 1943, section 9. Immutable; any thread may use
 * it.
 *
 * @param intermediateHz the intermediate frequency, Hz, positive
 * @param side where the oscillator runs
 */
public record Superhet(double intermediateHz, OscillatorSide side) {

    /** The highest harmonic of oscillator or signal that {@link #responses} looks at. */
    public static final int HIGHEST_HARMONIC = 5;

    public Superhet {
        if (!(intermediateHz > 0) || !Double.isFinite(intermediateHz)) {
            throw new IllegalArgumentException("the intermediate frequency must be positive, not " + intermediateHz);
        }
    }

    /**
     * A receiver whose oscillator runs above the signal.
     *
     * @param intermediateHz Hz, positive
     * @return the receiver
     */
    public static Superhet oscillatorAbove(double intermediateHz) {
        return new Superhet(intermediateHz, OscillatorSide.ABOVE);
    }

    /**
     * Where the oscillator runs: {@code f + IF} or {@code f - IF}.
     *
     * @param signalHz tuned frequency, Hz
     * @return Hz; not positive where the oscillator below the signal cannot be
     */
    public double oscillatorHz(double signalHz) {
        return signalHz + side.sign() * intermediateHz;
    }

    /**
     * The other signal that gives the same intermediate frequency: {@code f + 2 IF} or {@code f - 2 IF}.
     *
     * @param signalHz tuned frequency, Hz
     * @return Hz; not positive where there is none
     */
    public double imageHz(double signalHz) {
        return signalHz + 2 * side.sign() * intermediateHz;
    }

    /**
     * Where on the dial a signal is heard a second time, as an image: the tuned frequency whose image it is.
     *
     * @param signalHz the signal's true frequency, Hz
     * @return dial frequency, Hz; not positive where there is none
     */
    public double imageDialHz(double signalHz) {
        return signalHz - 2 * side.sign() * intermediateHz;
    }

    /**
     * Every signal frequency that mixes to the intermediate frequency while the set is tuned to one frequency:
     * {@code |m fo +- n f| = IF}, m from 0, n from 1, both up to {@link #HIGHEST_HARMONIC}. The wanted one (m = n = 1) and
     * the image are among them.
     *
     * @param tunedHz tuned frequency, Hz
     * @return by order {@code m + n}, then by frequency; only positive frequencies
     */
    public List<MixingResponse> responses(double tunedHz) {
        double oscillator = oscillatorHz(tunedHz);
        List<MixingResponse> found = new ArrayList<>();
        for (int m = 0; m <= HIGHEST_HARMONIC; m++) {
            for (int n = 1; n <= HIGHEST_HARMONIC; n++) {
                addResponse(found, m, n, (m * oscillator + intermediateHz) / n);
                addResponse(found, m, n, Math.abs(m * oscillator - intermediateHz) / n);
            }
        }
        found.sort(Comparator.comparingInt(MixingResponse::order).thenComparingDouble(MixingResponse::signalHz));
        return List.copyOf(found);
    }

    private static void addResponse(List<MixingResponse> found, int m, int n, double signalHz) {
        MixingResponse response = new MixingResponse(m, n, signalHz);
        if (signalHz > 0 && !found.contains(response)) {
            found.add(response);
        }
    }

    /**
     * Harmonics of the intermediate frequency inside a band: there a receiver whistles by itself, and a test point near one
     * misleads.
     *
     * @param lowHz lower end of the band, Hz
     * @param highHz upper end of the band, Hz
     * @return harmonics from the second up, ascending
     */
    public List<Double> intermediateHarmonicsWithin(double lowHz, double highHz) {
        List<Double> found = new ArrayList<>();
        for (int n = 2; n * intermediateHz <= highHz; n++) {
            if (n * intermediateHz >= lowHz) {
                found.add(n * intermediateHz);
            }
        }
        return List.copyOf(found);
    }

    /**
     * What a generator set to one frequency can make the set respond to when the set is tuned to another.
     *
     * @param generatorHz what the generator gives, Hz, positive
     * @param tunedHz what the set is tuned to, Hz
     * @param halfBandwidthHz how near is near, Hz, not negative
     * @return by harmonic of the generator; empty where nothing comes through
     */
    public List<GeneratorResponse> generatorResponses(double generatorHz, double tunedHz, double halfBandwidthHz) {
        List<GeneratorResponse> found = new ArrayList<>();
        for (int n = 1; n <= HIGHEST_HARMONIC; n++) {
            for (GeneratorResponse.Path path : GeneratorResponse.Path.values()) {
                double distanceHz = n * generatorHz - pathHz(path, tunedHz);
                if (Math.abs(distanceHz) <= halfBandwidthHz) {
                    found.add(new GeneratorResponse(n, path, distanceHz));
                }
            }
        }
        return List.copyOf(found);
    }

    private double pathHz(GeneratorResponse.Path path, double tunedHz) {
        return switch (path) {
            case SIGNAL -> tunedHz;
            case IMAGE -> imageHz(tunedHz);
            case INTERMEDIATE -> intermediateHz;
        };
    }
}
