package org.slugpeak.core.peak.bench;

import static org.slugpeak.core.peak.bench.Family.IF_SLUG;
import static org.slugpeak.core.peak.bench.Family.SHARP;
import static org.slugpeak.core.peak.bench.Family.TRIMMER;

import java.util.List;
import org.slugpeak.core.peak.bench.Family.Habit;
import org.slugpeak.core.peak.bench.Family.Law;

/** The kinds of run on the bench. */
final class Families {

    private static final double IF_SPEED = 40;
    private static final double TRIMMER_SPEED = 25;
    private static final Law CLEAN = Law.CLEAN;

    private Families() {}

    static List<Family> all() {
        return List.of(
                slug("slug 50/s 0.35 %", 50, 0.0035, CLEAN),
                slug("slug 50/s 2 %", 50, 0.02, CLEAN),
                slug("slug 50/s 5 %", 50, 0.05, CLEAN),
                slug("slug 1000/s 0.05 %", 1000, 0.0005, CLEAN),
                slug("slug 1000/s 5 %", 1000, 0.05, CLEAN.withReading()),
                slug("slug 10/s 0.35 %", 10, 0.0035, CLEAN),
                slug("slug 3/s 3.5 digits", 3, 0.0005, CLEAN.step(0.001)),
                slug("slug 2/s 0.2 %", 2, 0.002, CLEAN),
                slug("slug AVC 0.4", 50, 0.0035, CLEAN.avc(0.4)),
                slug("slug spikes 2 %", 50, 0.0035, CLEAN.spikes(0.02)),
                slug("slug hum beat 1 %", 50, 0.0035, CLEAN.hum(0.01, 1.3)),
                slug("slug slow beat 0.5 %", 50, 0.0035, CLEAN.hum(0.005, 0.4)),
                slug("slug drift 1 dB/min", 50, 0.0035, CLEAN.drift(1)),
                slug("slug 1/f 0.2 %", 50, 0.0035, CLEAN.flicker(0.002)),
                slug("slug irregular", 30, 0.0035, CLEAN.irregular(0.8, 0.1)),
                new Family("slug pauses", IF_SLUG, IF_SPEED, 50, 0.0035, CLEAN, Habit.PAUSES),
                new Family("slug wrong way", IF_SLUG, IF_SPEED, 50, 0.0035, CLEAN, Habit.WRONG_WAY),
                new Family("slug overshoots", IF_SLUG, IF_SPEED, 50, 0.0035, CLEAN, Habit.OVERSHOOTS),
                new Family("sharp 50/s 1 %", SHARP, IF_SPEED, 50, 0.01, CLEAN, Habit.PLAIN),
                trimmer("trimmer 50/s 0.35 %", 50, 0.0035, CLEAN),
                trimmer("trimmer 50/s 2 %", 50, 0.02, CLEAN),
                trimmer("trimmer 50/s 5 %", 50, 0.05, CLEAN),
                trimmer("trimmer 200/s 1 % spikes", 200, 0.01, CLEAN.spikes(0.02)),
                trimmer("trimmer 20/s irregular", 20, 0.0035, CLEAN.irregular(0.8, 0.1)));
    }

    private static Family slug(String name, double rate, double noise, Law law) {
        return new Family(name, IF_SLUG, IF_SPEED, rate, noise, law, Habit.PLAIN);
    }

    private static Family trimmer(String name, double rate, double noise, Law law) {
        return new Family(name, TRIMMER, TRIMMER_SPEED, rate, noise, law, Habit.PLAIN);
    }
}
