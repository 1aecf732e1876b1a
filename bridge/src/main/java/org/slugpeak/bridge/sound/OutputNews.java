package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioQuality;

/** Says when the output power reaches a standard one. One thread at a time. */
final class OutputNews {

    /** So much of a mark lost: worth saying when it is reached again. */
    private static final double LOST = 0.75;

    private final double ohms;
    private final double voltsPerFullScale;
    private double markWatts;

    OutputNews(double ohms, double voltsPerFullScale) {
        this.ohms = ohms;
        this.voltsPerFullScale = voltsPerFullScale;
    }

    /** Of a tone. */
    void see(AudioQuality quality, SourceListener listener) {
        double watts = OutputPower.watts(quality.toneFs() * voltsPerFullScale, ohms);
        double reached = watts >= OutputPower.LARGE_STANDARD_WATTS
                ? OutputPower.LARGE_STANDARD_WATTS
                : watts >= OutputPower.STANDARD_WATTS ? OutputPower.STANDARD_WATTS : 0;
        if (reached > markWatts) {
            listener.remark(at -> new Sound.OutputReached(at, 1000 * reached, 1000 * watts));
        }
        markWatts = reached >= markWatts || watts < LOST * markWatts ? reached : markWatts;
    }
}
