package org.slugpeak.core.sheet;

import java.util.Optional;
import org.slugpeak.core.curve.StandingLevel;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.peak.StepSize;
import org.slugpeak.core.reading.Reading;

/**
 * Waits until the output stands, and says what it is, how much it scatters, and how fine the last digit is. What stays beyond meter or set
 * as long is said to be too much; what does not come to stand is taken as it is after {@value #PATIENCE_NANOS} ns. One thread at a time.
 */
final class OutputWatch {

    /** Two seconds of readings: noise at a tenth of the signal then scatters by a hundredth. */
    private static final long STAND_NANOS = 2_000_000_000L;

    /** What a lagging meter needs after the generator was set. */
    private static final long SETTLE_NANOS = 500_000_000L;

    private static final long PATIENCE_NANOS = 15_000_000_000L;

    private final StandingLevel level = new StandingLevel(STAND_NANOS);
    private final StepSize digit = new StepSize();
    private Optional<Reading> before = Optional.empty();
    private long sinceNanos = Long.MIN_VALUE;
    private long trustedNanos;

    /** The generator was set. */
    void forget() {
        level.forget();
        sinceNanos = Long.MIN_VALUE;
    }

    /** A reading, and what it is above rest; gives the output once it is known. */
    Optional<OutputReading> see(Reading reading, double aboveRest) {
        long nowNanos = reading.tNanos();
        if (sinceNanos == Long.MIN_VALUE) {
            sinceNanos = nowNanos;
            trustedNanos = nowNanos;
        }
        if (nowNanos - sinceNanos < SETTLE_NANOS) {
            return Optional.empty();
        }
        if (reading.condition().isTrusted()) {
            before.ifPresent(it -> digit.add(reading.value() - it.value(), reading.value()));
            before = Optional.of(reading);
            level.see(nowNanos, aboveRest);
            trustedNanos = nowNanos;
        } else if (nowNanos - trustedNanos >= STAND_NANOS) {
            return Optional.of(OutputReading.TOO_MUCH);
        }
        boolean outOfPatience = nowNanos - sinceNanos >= PATIENCE_NANOS && Double.isFinite(level.mean());
        return level.stands() || outOfPatience ? Optional.of(output()) : Optional.empty();
    }

    /** A mean below nothing is nothing. */
    private OutputReading output() {
        double noise = level.sigma();
        return new OutputReading(Math.max(0, level.mean()), Double.isNaN(noise) ? 0 : noise, digit.step());
    }
}
