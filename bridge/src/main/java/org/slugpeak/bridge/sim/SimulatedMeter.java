package org.slugpeak.bridge.sim;

import java.util.Optional;
import java.util.SplittableRandom;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.SetOnBench;

/** Reads the set on the bench as a meter of some kind would. One thread at a time. */
final class SimulatedMeter {

    /** Twice the mains frequency, which is never exactly a multiple of the rate of readings; invented. */
    private static final double HUM_HZ = 100.037;

    /** What lies between the detector and the probe: the IF filter's resistor; invented, usual size. */
    private static final double SOURCE_OHM = 0.25e6;

    private final MeterModel model;
    private final SplittableRandom random;
    private boolean started;
    private long lastNanos;
    private long nextNanos;
    private double followed;
    private int range;
    private double seriesOhm;
    private Measurand measurand;

    SimulatedMeter(MeterModel model, SplittableRandom random) {
        this.model = model;
        this.random = random;
        this.measurand = model.measurand();
    }

    /** Turns its switch to AC or DC. */
    void turnTo(Measurand wanted) {
        measurand = wanted;
    }

    MeterModel model() {
        return model;
    }

    /** Puts a resistor in series with the lead, or 0 to take it out. */
    void series(double ohm) {
        seriesOhm = ohm;
    }

    /** What it loads the set with. */
    double totalOhm() {
        return model.inputOhm() + SOURCE_OHM + seriesOhm;
    }

    /** One tick: follows the voltage and reads it when it is time to. */
    Optional<Reading> step(long tNanos, SetOnBench set) {
        follow(tNanos, voltage(set));
        if (tNanos < nextNanos) {
            return Optional.empty();
        }
        long readNanos = nextNanos;
        nextNanos = readNanos + model.intervalNanos();
        double hum = isSound() ? 0 : set.humVolts() * Math.sin(2 * Math.PI * HUM_HZ * readNanos / 1e9);
        return read(readNanos, followed + hum, isSound() && set.clips());
    }

    private boolean isSound() {
        return measurand.equals(Measurand.AC_VOLTS);
    }

    private double voltage(SetOnBench set) {
        return isSound() ? set.voiceCoilVolts() : set.directVolts() * model.inputOhm() / totalOhm();
    }

    private void follow(long tNanos, double volts) {
        if (!started) {
            started = true;
            followed = volts;
        } else {
            followed += (volts - followed) * -Math.expm1(-(tNanos - lastNanos) / 1e9 / model.lagSeconds());
        }
        lastNanos = tNanos;
    }

    private Optional<Reading> read(long tNanos, double volts, boolean clips) {
        if (changesRange(Math.abs(volts))) {
            nextNanos = tNanos + model.autorangeNanos();
            return Optional.empty();
        }
        double end = model.rangeVolts() * Math.pow(10, range);
        if (Math.abs(volts) > end) {
            return Optional.of(
                    model.ranges() > 1
                            ? Reading.without(tNanos, Condition.OVER_RANGE)
                            : new Reading(tNanos, Math.copySign(end, volts), Condition.FULL_SCALE));
        }
        double step = model.stepVolts() * Math.pow(10, range);
        double value = Math.rint(volts / step + random.nextGaussian() * 0.3) * step;
        return Optional.of(new Reading(tNanos, value, clips ? Condition.CLIPPING : Condition.OK));
    }

    /** Up at the end of the range, down below its eleventh part, so that it does not hunt. */
    private boolean changesRange(double volts) {
        double end = model.rangeVolts() * Math.pow(10, range);
        if (volts > end && range + 1 < model.ranges()) {
            range++;
            return true;
        }
        if (range > 0 && volts < end / 11) {
            range--;
            return true;
        }
        return false;
    }
}
