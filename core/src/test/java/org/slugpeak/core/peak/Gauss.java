package org.slugpeak.core.peak;

import java.util.SplittableRandom;

/** Normal deviates, the same in every run. */
final class Gauss {

    private final SplittableRandom random;

    Gauss(long seed) {
        random = new SplittableRandom(seed);
    }

    double next() {
        double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        return radius * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
