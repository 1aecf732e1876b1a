package org.slugpeak.core.session;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.GainControl;

/**
 * Peaks that a hand crosses one after the other: V = V0 / sqrt(1 + x^2) behind a delayed gain control. The hand is a worse one
 * than the bench's: its speed differs from peak to peak and within one, it slows down near the top, sticks and slips, and pauses.
 * All its figures are made up.
 */
final class TurnedSlugs {

    private static final long READING_NANOS = 20_000_000;
    private static final double NOISE_VOLTS = 0.0035;
    private static final GainControl CONTROL = new GainControl(1.6, 7, 0.15);

    private final List<Caution.WidePeak> widePeaks = new ArrayList<>();
    private final Analysis analysis = new Analysis(PeakSettings.defaults(), this::hear);
    private final SplittableRandom random;
    private double slower = 1;
    private int adjuster;
    private long passes;
    private long tNanos;

    TurnedSlugs(long seed) {
        random = new SplittableRandom(seed);
    }

    double between(double from, double to) {
        return random.nextDouble(from, to);
    }

    /** From now on the hand is so many times slower. */
    TurnedSlugs slower(double times) {
        slower = times;
        return this;
    }

    /** One adjuster, from far below its maximum until the pass is called, with a generator so strong that V0 is reached. */
    TurnedSlugs peak(double volts) {
        analysis.nextAdjuster("slug " + ++adjuster);
        long before = passes;
        // Crossed at a practised pace, the flank of one of a nearly critical pair takes 2 to 4 s: its width doubles
        // with the other.
        double speed = Math.pow(2, between(-0.5, 0.5)) / between(2, 4) / slower;
        double sway = between(0.3, 0.45);
        double swayPerHalfWidth = between(0.5, 3);
        double slowerAtTheTop = between(1, 2);
        double slip = between(0.002, 0.03);
        double x = -between(1.2, 2.5);
        double pauseAt = random.nextDouble() < 0.4 ? between(x, 0.3) : 2;
        double pauseSeconds = between(0.3, 2);
        read(volts, x, 0.6);
        double owed = 0;
        while (passes == before && x < 2) {
            if (x > pauseAt) {
                pauseAt = 2;
                read(volts, x, pauseSeconds);
            }
            double now = speed * (1 + sway * Math.sin(swayPerHalfWidth * x)) / (x > -0.6 ? slowerAtTheTop : 1);
            owed += now * READING_NANOS / 1e9;
            if (owed > slip) {
                x += owed;
                owed = 0;
            }
            read(volts, x, 0);
        }
        return this;
    }

    private void hear(SessionRecord record) {
        if (record instanceof Passed) {
            passes++;
        } else if (record instanceof Caution.WidePeak wide) {
            widePeaks.add(wide);
        }
    }

    private void read(double volts, double x, double seconds) {
        double shown = control(volts / Math.sqrt(1 + x * x));
        for (long until = tNanos + (long) (seconds * 1e9); tNanos <= until; tNanos += READING_NANOS) {
            analysis.reading(Reading.of(tNanos, shown + NOISE_VOLTS * random.nextGaussian()));
        }
    }

    /** The voltage at which the detector and the gain that it leaves agree, by halving. */
    private static double control(double uncontrolled) {
        double low = 0;
        double high = uncontrolled;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            boolean more = uncontrolled * CONTROL.gain(CONTROL.targetVolts(middle)) > middle;
            low = more ? middle : low;
            high = more ? high : middle;
        }
        return low;
    }

    List<Caution.WidePeak> widePeaks() {
        return List.copyOf(widePeaks);
    }
}
