package org.slugpeak.bridge.source;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/**
 * By how much an instrument takes mains hum down: hum of a known size is put on its input, and what is left of it is what the
 * readings still wander. Noise and drift count as hum, so the true rejection is this or better. One thread at a time; cost per
 * reading is constant.
 */
public final class HumRejection implements SourceListener {

    private final double humRms;
    private long count;
    private double mean;
    private double squares;

    /**
     * With hum on the input.
     *
     * @param humRms its RMS value in the unit of the readings, greater than 0
     */
    public HumRejection(double humRms) {
        if (!(humRms > 0 && Double.isFinite(humRms))) {
            throw new IllegalArgumentException("hum must be greater than 0, not " + humRms);
        }
        this.humRms = humRms;
    }

    @Override
    public void reading(Reading reading) {
        if (!reading.condition().isTrusted()) {
            return;
        }
        // B. P. Welford, "Note on a Method for Calculating Corrected Sums of Squares and Products", Technometrics 4
        // (1962) 419.
        count++;
        double off = reading.value() - mean;
        mean += off / count;
        squares += off * (reading.value() - mean);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {}

    @Override
    public void garbled(String where, String problem) {}

    /**
     * What was found so far.
     *
     * @return dB; empty before two readings, and where nothing is left
     */
    public OptionalDouble decibels() {
        double left = Math.sqrt(squares / count);
        return count >= 2 && left > 0 ? OptionalDouble.of(Decibels.of(humRms / left)) : OptionalDouble.empty();
    }
}
