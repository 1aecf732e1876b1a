package org.slugpeak.bridge.source;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * How sound a link was while it was watched. Immutable; any thread may use it.
 *
 * @param readings how many came, of any condition
 * @param overRange how many said that the input is beyond the range or at the end of the scale
 * @param withoutValue how many carried no number for another reason
 * @param garbled how often each kind of damage was met; kinds that were not met are left out
 * @param lost how often the instrument went away
 * @param stale how often it fell silent
 * @param rangeChanges how often the meter changed its range by itself
 * @param restarts how often the instrument started anew
 * @param skipped how often the instrument said that it could not send all its readings
 * @param gaps intervals more than three times as long as usual
 * @param perSecond readings a second: one over the median interval; empty before two readings
 * @param jitterSeconds spread of the intervals, as a standard deviation that single delays do not inflate; empty before three
 * @param longestSeconds the longest interval; empty before two readings
 * @param noise short-term spread of the value, as a standard deviation that slow changes and single jumps do not inflate, in
 *     the unit of the source; empty before three readings with a value
 * @param resolution the smallest step between readings that follow each other; empty where the value never changed
 * @param effectiveBits of a converter whose scale is known; empty where it is not, or where nothing moved
 */
public record LinkReport(
        long readings,
        long overRange,
        long withoutValue,
        Map<Garble, Long> garbled,
        long lost,
        long stale,
        long rangeChanges,
        long restarts,
        long skipped,
        long gaps,
        OptionalDouble perSecond,
        OptionalDouble jitterSeconds,
        OptionalDouble longestSeconds,
        OptionalDouble noise,
        OptionalDouble resolution,
        OptionalDouble effectiveBits) {

    public LinkReport {
        garbled = Map.copyOf(garbled);
    }

    /**
     * All damage together.
     *
     * @return how many things came that were no readings
     */
    public long garbledInAll() {
        return garbled.values().stream().mapToLong(Long::longValue).sum();
    }
}
