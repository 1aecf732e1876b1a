package org.slugpeak.core.signal;

/**
 * Tells a tone from a line of hum that only looks like one. A candidate on a harmonic of the mains counts as hum unless it
 * stands 6 dB above the lines next to it and next but one (after a full-wave rectifier every second line is missing).
 */
final class HumTest {

    private static final double STANDS_OUT = 2;
    private static final int REACH = 2;

    private final double rateHz;
    private final Correlator correlator;
    private final double nearHz;

    HumTest(Taper taper, double rateHz) {
        this.rateHz = rateHz;
        this.correlator = new Correlator(taper);
        this.nearHz = 0.3 * rateHz / taper.length();
    }

    /** Whether what stands at {@code hz} with this amplitude may be hum; {@code mainsHz} 0 means that both are possible. */
    boolean mayBeHum(double[] raw, double hz, double amplitude, double mainsHz) {
        if (mainsHz > 0) {
            return mayBeHumOf(mainsHz, raw, hz, amplitude);
        }
        for (double nominal : HumModel.MAINS_HZ) {
            if (mayBeHumOf(nominal, raw, hz, amplitude)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the first lines of hum are so strong that their harmonics may bend what is seen in the tone band. */
    boolean overwhelmed(double[] raw, double amplitude) {
        for (double nominal : HumModel.MAINS_HZ) {
            for (int k = 1; k <= 3; k++) {
                if (amplitude < STANDS_OUT * amplitudeAt(raw, k * nominal)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean mayBeHumOf(double mains, double[] raw, double hz, double amplitude) {
        long line = Math.round(hz / mains);
        if (Math.abs(hz - line * mains) > nearHz) {
            return false;
        }
        for (int d = -REACH; d <= REACH; d++) {
            if (d != 0 && line + d > 0 && amplitude < STANDS_OUT * amplitudeAt(raw, (line + d) * mains)) {
                return true;
            }
        }
        return false;
    }

    private double amplitudeAt(double[] raw, double hz) {
        correlator.run(raw, 0, 2 * Math.PI * hz / rateHz);
        return correlator.amplitude();
    }
}
