package org.slugpeak.core.rehearsal;

import java.util.Arrays;
import org.slugpeak.core.receiver.Discriminator;

/** What the circuits make of the generator's signal, worked out again only where something was turned. One thread at a time. */
final class Reception {

    private static final Discriminator.Halves NO_DETECTOR = new Discriminator.Halves(1, 1);

    private final Circuits circuits;
    private double[] state = {};
    private double gain;
    private Discriminator.Halves halves = NO_DETECTOR;
    private Discriminator.Halves noiseHalves = NO_DETECTOR;

    Reception(Circuits circuits) {
        this.circuits = circuits;
    }

    /** To be called before the others. */
    void follow(PlannedScene scene, double generatorHz, double dialHz) {
        double[] now = new double[circuits.knobs().size() + 2];
        now[0] = generatorHz;
        now[1] = dialHz;
        int i = 2;
        for (Knob knob : circuits.knobs().values()) {
            now[i++] = knob.turns();
        }
        if (!Arrays.equals(now, state)) {
            state = now;
            gain = circuits.response(scene, generatorHz, dialHz);
            IfStrip strip = circuits.strip(scene);
            double arrivesHz = circuits.convertedHz(scene, generatorHz, dialHz);
            halves = strip.detector().map(it -> it.at(arrivesHz)).orElse(NO_DETECTOR);
            noiseHalves = strip.detector().map(it -> it.at(strip.centreHz())).orElse(NO_DETECTOR);
        }
    }

    /** Another scene, or something other than a knob, the generator or the dial has changed. */
    void forget() {
        state = new double[0];
    }

    double gain() {
        return gain;
    }

    /**
     * What a discriminator makes of a volt of carrier and noise together: noise lies about the middle of its band wherever the
     * carrier is, and both add as powers.
     */
    Discriminator.Halves halves(double carrierPeakVolts, double noiseVolts) {
        double all = Math.hypot(carrierPeakVolts, Math.sqrt(2) * noiseVolts);
        double carrier = all == 0 ? 1 : carrierPeakVolts / all;
        double noise = Math.sqrt(Math.max(0, 1 - carrier * carrier));
        return new Discriminator.Halves(
                Math.hypot(carrier * halves.upper(), noise * noiseHalves.upper()),
                Math.hypot(carrier * halves.lower(), noise * noiseHalves.lower()));
    }
}
