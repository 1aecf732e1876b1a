package org.slugpeak.core.rehearsal;

import java.util.List;
import org.slugpeak.core.receiver.CrystalLoop;

/**
 * A filter with one crystal, switched in at its sharpest. One thread at a time.
 *
 * @param crystalHz series resonance
 * @param load coil that tunes the load to it
 */
record CrystalFilter(double crystalHz, Knob load) implements StripPart {

    /** A bar for some 450 kHz has a few henry, from memory; the rest is made up, of usual size. */
    private static final CrystalLoop USUAL = new CrystalLoop(455e3, 3, 3500, 4000, 60);

    /** Of the load circuit. */
    static final double LOAD_Q = USUAL.loadQ();

    @Override
    public double response(double hz) {
        CrystalLoop loop = new CrystalLoop(crystalHz, USUAL.henry(), USUAL.sourceOhm(), USUAL.loadOhm(), USUAL.loadQ());
        return loop.response(hz, crystalHz / Math.sqrt(1 + load.effect())) / loop.response(crystalHz, crystalHz);
    }

    static double loopWidthHz() {
        return USUAL.widthHz();
    }

    @Override
    public double widthHz() {
        return loopWidthHz();
    }

    @Override
    public List<Winding> windings() {
        return List.of();
    }
}
