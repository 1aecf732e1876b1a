package org.slugpeak.bridge.source;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

/**
 * Watches a source and says how sound its link is. One thread at a time; memory is bounded, spread and noise are those of the
 * last 65 536 readings.
 *
 * <p>Noise is measured on the differences of readings that follow each other, so that a drifting or slowly turned set does
 * not count; the difference of two independent readings spreads the square root of two times as wide as one.
 */
public final class LinkStatistics implements SourceListener {

    private static final double NANOS_PER_SECOND = 1e9;
    private static final double GAP_FACTOR = 3;

    /** Smaller steps are the rounding of the arithmetic, not of the instrument. */
    private static final double ROUNDING = 1e-12;

    private final RobustSpread intervals = new RobustSpread();
    private final RobustSpread steps = new RobustSpread();
    private final Map<Garble, Long> garbled = new EnumMap<>(Garble.class);
    private final Map<Link.State, Long> links = new EnumMap<>(Link.State.class);
    private final Map<LinkNotice, Long> notices = new EnumMap<>(LinkNotice.class);
    private final Map<Condition, Long> conditions = new EnumMap<>(Condition.class);
    private final OptionalDouble scaleSpan;
    private long readings;
    private boolean timeFollows;
    private boolean valueFollows;
    private long lastNanos;
    private double lastValue;
    private double longestSeconds = Double.NaN;
    private double smallestStep = Double.NaN;

    /**
     * Statistics of a link that was not heard yet.
     *
     * @param scaleSpan width of the instrument's scale, in the unit of the readings; empty where it is not known
     */
    public LinkStatistics(OptionalDouble scaleSpan) {
        this.scaleSpan = scaleSpan;
    }

    @Override
    public void reading(Reading reading) {
        readings++;
        conditions.merge(reading.condition(), 1L, Long::sum);
        if (timeFollows) {
            double seconds = (reading.tNanos() - lastNanos) / NANOS_PER_SECOND;
            intervals.add(seconds);
            longestSeconds = Double.isNaN(longestSeconds) ? seconds : Math.max(longestSeconds, seconds);
        }
        lastNanos = reading.tNanos();
        timeFollows = true;
        value(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        links.merge(state, 1L, Long::sum);
        if (state == Link.State.LOST) {
            timeFollows = false;
            valueFollows = false;
        }
    }

    @Override
    public void garbled(String where, String problem) {
        garbled(where, Garble.MALFORMED, problem);
    }

    @Override
    public void garbled(String where, Garble kind, String problem) {
        garbled.merge(kind, 1L, Long::sum);
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        notices.merge(notice, 1L, Long::sum);
        valueFollows = false;
    }

    /**
     * What was found so far.
     *
     * @return a report that does not change any more
     */
    public LinkReport report() {
        OptionalDouble interval = intervals.median();
        OptionalDouble noise = scaled(steps.about(0), 1 / Math.sqrt(2));
        OptionalDouble resolution = present(smallestStep);
        return new LinkReport(
                readings,
                count(conditions, Condition.OVER_RANGE)
                        + count(conditions, Condition.FULL_SCALE)
                        + count(conditions, Condition.CLIPPING),
                count(conditions, Condition.NO_VALUE),
                garbled,
                count(links, Link.State.LOST),
                count(links, Link.State.STALE),
                count(notices, LinkNotice.RANGE_CHANGED),
                count(notices, LinkNotice.RESTARTED),
                count(notices, LinkNotice.READINGS_SKIPPED),
                interval.isPresent() ? intervals.countAbove(GAP_FACTOR * interval.getAsDouble()) : 0,
                interval.isPresent() && interval.getAsDouble() > 0
                        ? OptionalDouble.of(1 / interval.getAsDouble())
                        : OptionalDouble.empty(),
                intervals.aboutMedian(),
                present(longestSeconds),
                noise,
                resolution,
                effectiveBits(noise, resolution));
    }

    private void value(Reading reading) {
        if (!reading.condition().isTrusted()) {
            valueFollows = false;
            return;
        }
        if (valueFollows) {
            double step = Math.abs(reading.value() - lastValue);
            steps.add(step);
            if (step > ROUNDING * Math.abs(lastValue)) {
                smallestStep = Double.isNaN(smallestStep) ? step : Math.min(smallestStep, step);
            }
        }
        lastValue = reading.value();
        valueFollows = true;
    }

    /**
     * Full scale over noise times the square root of twelve, as a power of two: the bits of an ideal converter with that noise
     * (IEEE Std 1241, effective number of bits). A converter that stands still has at least the noise of its own steps.
     */
    private OptionalDouble effectiveBits(OptionalDouble noise, OptionalDouble resolution) {
        double ofSteps = resolution.orElse(0) / Math.sqrt(12);
        double worst = Math.max(noise.orElse(0), ofSteps);
        return scaleSpan.isPresent() && worst > 0
                ? OptionalDouble.of(Math.log(scaleSpan.getAsDouble() / (worst * Math.sqrt(12))) / Math.log(2))
                : OptionalDouble.empty();
    }

    private static <K> long count(Map<K, Long> counts, K key) {
        return counts.getOrDefault(key, 0L);
    }

    private static OptionalDouble present(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
