package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

/** The same readings of one straight travel with true stamps, and stamped as a transport or a coarse clock stamps them. */
final class Packets {

    private static final List<String> COUNTED = List.of("silent", "early", "late");
    private static final double HALF_WIDTH = Family.IF_SLUG;
    private static final double SPEED = 40;
    private static final double NOISE = 0.0035;

    private Packets() {}

    static List<Trouble> all() {
        List<Trouble> troubles = new ArrayList<>();
        for (double rate : new double[] {20, 100}) {
            troubles.add(trouble("packets of 1 to 20, %.0f/s", rate, 20, 1e-9));
            troubles.add(trouble("packets of 5, %.0f/s", rate, -5, 1e-9));
            troubles.add(trouble("stamps of 0.1 s, %.0f/s", rate, 1, 0.1));
            troubles.add(trouble("stamps of 1 s, %.0f/s", rate, 1, 1));
        }
        return troubles;
    }

    /** A negative number of readings in a packet is always this number, a positive one at most. */
    private static Trouble trouble(String name, double rate, int most, double stampSeconds) {
        return new Trouble(
                String.format(Locale.ROOT, name, rate), COUNTED, random -> run(random, rate, most, stampSeconds));
    }

    private static int[] run(SplittableRandom random, double rate, int most, double stampSeconds) {
        double from = random.nextDouble(1.2, 3) * HALF_WIDTH;
        Script script = new Script(from, SPEED).rest(1).turnTo(-random.nextDouble(1.2, 3) * HALF_WIDTH);
        double top = 1 + from / SPEED;
        int readings = (int) (script.endSeconds() * rate);
        double[] values = new double[readings];
        double[] sentAt = new double[readings];
        double longest = stampSeconds;
        for (int i = 0; i < readings; ) {
            int size = Math.min(readings - i, most > 0 ? random.nextInt(1, most + 1) : -most);
            longest = Math.max(longest, size / rate);
            for (int end = i + size; i < end; i++) {
                values[i] = 1 / Math.hypot(1, script.degrees(i / rate) / HALF_WIDTH) + NOISE * random.nextGaussian();
                sentAt[i] = (end - 1) / rate;
            }
        }
        Words plain = listen(values, i -> i / rate, i -> i / rate);
        Words packed = listen(values, i -> sentAt[i], i -> Math.floor(sentAt[i] / stampSeconds) * stampSeconds);
        double latest = longest
                + plain.firstAfter("passed", top).map(Words.Word::seconds).orElse(script.endSeconds());
        return new int[] {
            Trouble.count(!packed.told("passed", w -> true)),
            (int) packed.count("passed", w -> w.seconds() < top),
            Trouble.count(packed.firstAfter("passed", top)
                    .filter(w -> w.seconds() > latest)
                    .isPresent())
        };
    }

    private static Words listen(double[] values, IntToDoubleFunction sentAt, IntToDoubleFunction stamp) {
        Words words = new Words();
        Watcher watcher = Watcher.finder(words);
        for (int i = 0; i < values.length; i++) {
            words.at(sentAt.applyAsDouble(i));
            watcher.accept(Math.round(stamp.applyAsDouble(i) * 1e9), values[i]);
        }
        return words;
    }
}
