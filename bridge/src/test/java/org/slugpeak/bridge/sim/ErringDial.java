package org.slugpeak.bridge.sim;

import java.util.List;
import java.util.Random;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.word.Refused;

/** A generator whose dial a hand reads and sets anew each time, a little off, by a Gaussian. One thread at a time. */
final class ErringDial {

    private final Random random;
    private final double sigmaHz;

    /**
     * A dial.
     *
     * @param seed of its errors
     * @param sigmaHz how well it is read and set, Hz
     */
    ErringDial(long seed, double sigmaHz) {
        this.random = new Random(seed);
        this.sigmaHz = sigmaHz;
    }

    /** What is known of it: every mark is right but for that. */
    DialScale scale() throws Refused {
        return DialScale.through(
                List.of(new KnownPoint(100e3, 100e3, 0), new KnownPoint(1e6, 1e6, 0), new KnownPoint(10e6, 10e6, 0)),
                sigmaHz);
    }

    /** What it gives where this was asked for. */
    SessionRecord fed(SessionRecord record) {
        if (record instanceof Request.SetInput it && it.setting().handwork() != Handwork.TUNE_GENERATOR) {
            InputSetting wanted = it.setting();
            double hz = wanted.frequencyHz() + sigmaHz * random.nextGaussian();
            return new Request.SetInput(it.tNanos(), wanted.standingAt(hz, wanted.emfVolts()), it.unasked(), it.mark());
        }
        return record;
    }
}
