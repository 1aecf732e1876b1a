package org.slugpeak.core.signal;

/**
 * The steady hum of the mains and its harmonics up to 1200 Hz, as measured over the last second, and what it will be a
 * moment later; so that it can be taken out of a much shorter window that could not tell it from the tone.
 *
 * <p>The window is a Blackman-Harris one, so that a tone 4 bins (4 Hz) away leaves no trace in a line. Nearer than that
 * the two cannot be told apart, and the line is left alone. The mains frequency is the average of what the lines say, each
 * with the weight of its power and squared number, as for any sum of harmonics in white noise.
 */
final class HumModel {

    static final double[] MAINS_HZ = {50, 60};

    private static final double HIGHEST_HZ = 1200;
    private static final double GUARD_BINS = 4;
    private static final double SIGNIFICANT = 20;
    private static final double SHORT_WINDOW_REACH_HZ = 12;
    private static final double MAINS_TOLERANCE = 0.01;

    private final double rateHz;
    private final Correlator[] windows;
    private final double[] cosine;
    private final double[] sine;
    private final double[] offset;
    private final boolean[] standing;
    private boolean ready;
    private double mainsHz;
    private double floor;
    private double guardHz;
    private long centre;
    private double centreRemainder;

    HumModel(double rateHz) {
        this.rateHz = rateHz;
        this.windows = new Correlator[] {
            new Correlator(Taper.blackmanHarris((int) rateHz)), new Correlator(Taper.blackmanHarris((int) (rateHz / 2)))
        };
        int most = (int) (HIGHEST_HZ / MAINS_HZ[0]) + 1;
        this.cosine = new double[most + 1];
        this.sine = new double[most + 1];
        this.offset = new double[most + 1];
        this.standing = new boolean[most + 1];
    }

    /** How many samples are kept for it. */
    int span() {
        return windows[0].length();
    }

    /** Measures the lines afresh; a line too near to {@code toneHz} (0: no tone) is not one. */
    void update(History raw, double toneHz) {
        for (Correlator window : windows) {
            if (raw.holds(window.length())) {
                ready = true;
                update(raw, window, toneHz);
                return;
            }
        }
    }

    /** Whether enough was heard to know about hum at all. */
    boolean ready() {
        return ready;
    }

    /** Mains frequency, or 0 where there is no hum to speak of. */
    double mainsHz() {
        return mainsHz;
    }

    /** How near to a line a tone hides it, hertz. */
    double guardHz() {
        return guardHz;
    }

    int lines() {
        return mainsHz == 0 ? 0 : Math.min(standing.length - 1, (int) (HIGHEST_HZ / mainsHz));
    }

    boolean stands(int harmonic) {
        return standing[harmonic];
    }

    double level(int harmonic) {
        return Math.hypot(cosine[harmonic], sine[harmonic]);
    }

    /** Level of all lines together. */
    double totalLevel() {
        double sum = 0;
        for (int k = 1; k <= lines(); k++) {
            if (standing[k]) {
                sum += cosine[k] * cosine[k] + sine[k] * sine[k];
            }
        }
        return Math.sqrt(sum);
    }

    /** Takes the lines out of {@code length} samples at {@code from} in {@code into}, the first being number {@code first}. */
    void subtract(double[] into, int from, int length, long first) {
        for (int k = 1; k <= lines(); k++) {
            if (standing[k]) {
                subtractLine(k, into, from, length, first);
            }
        }
    }

    private void subtractLine(int k, double[] into, int from, int length, long first) {
        double omega = 2 * Math.PI * k * mainsHz / rateHz;
        double phase = Math.atan2(sine[k], cosine[k]) + omega * (first - centre - centreRemainder);
        double amplitude = level(k);
        double twice = 2 * Math.cos(omega);
        double before = amplitude * Math.cos(phase - omega);
        double now = amplitude * Math.cos(phase);
        for (int i = 0; i < length; i++) {
            into[from + i] -= now;
            double next = twice * now - before;
            before = now;
            now = next;
        }
    }

    private void update(History raw, Correlator window, double toneHz) {
        boolean known = mainsHz != 0 && guardHz == GUARD_BINS * rateHz / window.length();
        guardHz = GUARD_BINS * rateHz / window.length();
        double[] data = raw.data();
        int from = raw.from(window.length());
        if (!known || !plausible(data, from, window, mainsHz)) {
            mainsHz = strongerMains(data, from, window);
            known = false;
        }
        centre = raw.total() - window.length();
        centreRemainder = (window.length() - 1) / 2.0;
        // The first look at the lines serves to find the exact frequency, the second to measure at it.
        for (int pass = known ? 1 : 0; pass < 2 && mainsHz != 0; pass++) {
            measureLines(data, from, window);
            // What was taken for the tone before the hum was known may have been a mixture of both.
            leaveTone(known && toneHz > 0 ? closeLook(data, from, window, toneHz) : 0);
            correctMains();
        }
    }

    private void leaveTone(double toneHz) {
        for (int k = 1; k <= lines(); k++) {
            standing[k] &= Math.abs(k * mainsHz - toneHz) > guardHz && !standsOut(k);
        }
    }

    /**
     * Where the tone is by the long window. Next to a line of hum the short window sees the two as one, somewhere between.
     */
    private double closeLook(double[] data, int from, Correlator window, double toneHz) {
        double lineHz = Math.round(toneHz / mainsHz) * mainsHz;
        if (Math.abs(toneHz - lineHz) > guardHz) {
            return toneHz;
        }
        double below = strongestNext(data, from, window, lineHz, -1);
        double above = strongestNext(data, from, window, lineHz, 1);
        double stronger = powerAt(data, from, window, below) > powerAt(data, from, window, above) ? below : above;
        return stronger == lineHz ? toneHz : stronger;
    }

    /** The highest hill of the spectrum on one side of a line and out of its own; the line itself where there is none. */
    private double strongestNext(double[] data, int from, Correlator window, double lineHz, int side) {
        double stepHz = side * rateHz / window.length();
        double found = lineHz;
        double strongest = SIGNIFICANT * floor;
        double hz = lineHz + side * guardHz;
        double before = powerAt(data, from, window, hz);
        double here = powerAt(data, from, window, hz + stepHz);
        while (Math.abs(hz - lineHz) < SHORT_WINDOW_REACH_HZ) {
            hz += stepHz;
            double next = powerAt(data, from, window, hz + stepHz);
            if (here > before && here >= next && here > strongest) {
                strongest = here;
                found = hz;
            }
            before = here;
            here = next;
        }
        return found;
    }

    /** A line of the tone band 6 dB above its neighbours on either side is a tone that happens to lie there. */
    private boolean standsOut(int k) {
        double hz = k * mainsHz;
        if (hz < ToneTracker.LOWEST_HZ - guardHz || hz > ToneTracker.HIGHEST_HZ + guardHz) {
            return false;
        }
        double neighbours = 0;
        for (int d = 1; d <= 2; d++) {
            neighbours = Math.max(neighbours, level(k - d));
            neighbours = k + d <= lines() ? Math.max(neighbours, level(k + d)) : neighbours;
        }
        return level(k) > 2 * neighbours;
    }

    private double strongerMains(double[] data, int from, Correlator window) {
        boolean first = plausible(data, from, window, MAINS_HZ[0]);
        double firstPower = firstLines(data, from, window, MAINS_HZ[0]);
        boolean second = plausible(data, from, window, MAINS_HZ[1]);
        double secondPower = firstLines(data, from, window, MAINS_HZ[1]);
        if (first && (!second || firstPower >= secondPower)) {
            return MAINS_HZ[0];
        }
        return second ? MAINS_HZ[1] : 0;
    }

    /** One of the first three lines must stand well above what lies half-way between them. */
    private boolean plausible(double[] data, int from, Correlator window, double hz) {
        double strongest = 0;
        double between = 0;
        for (int k = 1; k <= 3; k++) {
            strongest = Math.max(strongest, powerAt(data, from, window, k * hz));
            between += powerAt(data, from, window, (k + 0.5) * hz) / 3;
        }
        floor = between;
        return strongest > SIGNIFICANT * between && strongest > 0;
    }

    private double firstLines(double[] data, int from, Correlator window, double hz) {
        double sum = 0;
        for (int k = 1; k <= 3; k++) {
            sum += powerAt(data, from, window, k * hz);
        }
        return sum;
    }

    private double powerAt(double[] data, int from, Correlator window, double hz) {
        window.run(data, from, 2 * Math.PI * hz / rateHz);
        return window.power();
    }

    private void measureLines(double[] data, int from, Correlator window) {
        for (int k = 1; k <= lines(); k++) {
            window.run(data, from, 2 * Math.PI * k * mainsHz / rateHz);
            standing[k] = window.power() > SIGNIFICANT * floor;
            cosine[k] = window.cosine();
            sine[k] = window.sine();
            offset[k] = window.offset();
        }
    }

    private void correctMains() {
        double pull = 0;
        double weight = 0;
        for (int k = 1; k <= lines(); k++) {
            if (standing[k]) {
                double power = level(k) * level(k);
                pull += k * power * offset[k];
                weight += k * k * power;
            }
        }
        if (weight > 0) {
            correct(pull / weight * rateHz / (2 * Math.PI));
        }
    }

    private void correct(double byHz) {
        for (double nominal : MAINS_HZ) {
            if (Math.abs(mainsHz + byHz - nominal) < MAINS_TOLERANCE * nominal) {
                mainsHz += byHz;
                return;
            }
        }
        mainsHz = 0;
    }
}
