package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * The ideal observer: it knows the curve and its height, how fast it is turned, and the law of the noise. All it does not know is
 * whether the top is behind, and since when. Its other hypothesis is the rest for which the false rate is promised: the reading stays at
 * the height of the top. (On the flank an observer that knows height and curve would foretell the top; no height is known at the bench
 * before the top was seen, so the flank decides nothing here and only teaches coloured noise.)
 *
 * <p>For each moment s at which the top may have been crossed, L(s) is the ratio of the likelihoods of the readings since s: fallen
 * along the curve from s, against at rest. With every moment equally likely the evidence is the sum R of L(s) over all s, one for each
 * reading (averaged over moments between two readings); it flags when R reaches A (Shiryaev, Theory Probab. Appl. 8 (1963) 22; Roberts,
 * Technometrics 8 (1966) 411). At rest each L(s) has the mean 1, so that R less the number of readings is a martingale, and the mean
 * number of readings to a false flag is the mean of R when it flags, at least A (Pollak, Ann. Statist. 13 (1985) 206). For one false
 * flag in {@value #HOURS} h, A is the number of readings in that time; no calibration is needed. For a change to another
 * fixed law no test with that false rate has a shorter delay, averaged over all moments of the change (Pollak and Tartakovsky, Statist.
 * Sinica 19 (2009) 1729); for one that grows, as here, that holds in the limit of few false flags (Lai, IEEE Trans. Inf. Theory 44
 * (1998) 2917). All sources from memory.
 *
 * <p>What comes out for white noise: a time t after the top, at r half-widths a second and f readings of noise s a second, the fall
 * stands out by d = r² t^2.5 √f / (√20 s) sigma; the sum over s is as good as 0.97 f t / d moments; so d²/2 = ln(3600 h d / (0.97 t)),
 * about five sigma. See {@link #expectedSeconds}.
 */
final class Observer {

    /** The finder's goal: at most one false pass in so many hours. */
    static final double HOURS = 10;
    /** Moments at which the top may have been crossed lie no further apart: a fortieth of a second is a degree of turn. */
    private static final double FINEST_SECONDS = 0.025;
    /** Where the mean moments' spread comes from: sqrt(2 pi 3 / 20). */
    private static final double SPREAD = Math.sqrt(0.3 * Math.PI);

    private final double halfWidthsPerSecond;
    private final double flagsAt;
    private final double[] seconds;
    private final Evidence evidence;
    private final List<Moment> moments = new ArrayList<>();

    /** One moment at which the top may have been crossed, and what speaks for it. */
    private static final class Moment {
        final double atSeconds;
        final double weight;
        final int first;
        final double[] fall;
        final double[] whitened;
        double log;

        Moment(double atSeconds, double weight, int first, int readings) {
            this.atSeconds = atSeconds;
            this.weight = weight;
            this.first = first;
            this.fall = new double[readings];
            this.whitened = new double[readings];
        }
    }

    /**
     * Knows everything but the top.
     *
     * @param halfWidthsPerSecond speed of turning
     * @param flagsAt mean number of readings to a false flag
     * @param seconds times of the readings
     * @param evidence of the readings
     */
    Observer(double halfWidthsPerSecond, double flagsAt, double[] seconds, Evidence evidence) {
        this.halfWidthsPerSecond = halfWidthsPerSecond;
        this.flagsAt = flagsAt;
        this.seconds = seconds;
        this.evidence = evidence;
    }

    /**
     * What it has seen.
     *
     * @param flagSeconds when it flags; never is infinite
     * @param evidence the highest sum by a given time: an observer that flagged by then would wait, at rest, so many readings at least for a
     *     false flag
     */
    record Watch(double flagSeconds, double evidence) {}

    /** When it flags, given the first reading at which the top may be behind; never is infinite. */
    double flagSeconds(int first) {
        return watch(first, Double.NEGATIVE_INFINITY).flagSeconds();
    }

    /** Watches until it flags, and until a time. */
    Watch watch(int first, double untilSeconds) {
        double flag = Double.POSITIVE_INFINITY;
        double highest = 0;
        for (int i = first; i < seconds.length && (seconds[i] <= untilSeconds || Double.isInfinite(flag)); i++) {
            begin(i);
            double sum = sum(i);
            flag = sum >= flagsAt ? Math.min(flag, seconds[i]) : flag;
            highest = seconds[i] <= untilSeconds ? Math.max(highest, sum) : highest;
        }
        return new Watch(flag, highest);
    }

    private void begin(int reading) {
        double before = reading > 0 ? seconds[reading - 1] : seconds[0] - (seconds[1] - seconds[0]);
        double interval = seconds[reading] - before;
        int parts = (int) Math.ceil(interval / FINEST_SECONDS);
        for (int k = 0; k < parts; k++) {
            moments.add(new Moment(before + (k + 0.5) * interval / parts, 1.0 / parts, reading, seconds.length));
        }
    }

    private double sum(int reading) {
        double sum = 0;
        for (Moment moment : moments) {
            double u = halfWidthsPerSecond * (seconds[reading] - moment.atSeconds);
            moment.fall[reading] = 1 / Math.hypot(1, u) - 1;
            moment.log += evidence.of(reading, moment.fall, moment.whitened, moment.first);
            sum += moment.weight * Math.exp(moment.log);
        }
        return sum;
    }

    /** The delay to expect for white noise, from the formula above. */
    static double expectedSeconds(double halfWidthsPerSecond, double rate, double sigma, double hours) {
        double d = 5;
        double t = 1;
        for (int i = 0; i < 50; i++) {
            t = Math.pow(d * Math.sqrt(20 / rate) * sigma / Math.pow(halfWidthsPerSecond, 2), 1 / 2.5);
            d = Math.sqrt(2 * Math.log(3600 * hours * d / (SPREAD * t)));
        }
        return t;
    }
}
