package org.slugpeak.core.signal;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.reading.Condition;

/** All that a meter said of some audio. */
final class Heard {

    record Level(double seconds, double fs, Condition condition) {}

    private final double rateHz;
    private final List<Level> levels = new ArrayList<>();
    private final AudioMeter meter;

    Heard(double rateHz, MeterSettings settings) {
        this.rateHz = rateHz;
        this.meter = new AudioMeter(
                rateHz, settings, (frame, level, condition) -> levels.add(new Level(frame / rateHz, level, condition)));
    }

    static Heard of(double rateHz, double[] samples) {
        return of(rateHz, MeterSettings.defaults(), samples);
    }

    static Heard of(double rateHz, MeterSettings settings, double[] samples) {
        Heard heard = new Heard(rateHz, settings);
        heard.hear(samples);
        return heard;
    }

    void hear(double[] samples) {
        meter.take(samples, 0, samples.length);
    }

    List<Level> levels() {
        return List.copyOf(levels);
    }

    List<Level> after(double seconds) {
        return levels.stream().filter(l -> l.seconds() > seconds).toList();
    }

    Level last() {
        return levels.get(levels.size() - 1);
    }

    AudioQuality quality() {
        return meter.quality();
    }

    AudioMeter meter() {
        return meter;
    }

    double rateHz() {
        return rateHz;
    }

    static double dB(double ratio) {
        return 20 * Math.log10(ratio);
    }
}
