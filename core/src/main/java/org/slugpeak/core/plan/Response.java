package org.slugpeak.core.plan;

import java.util.OptionalDouble;

/**
 * Over what the response of a stage is judged when its adjusters stand; refused with an {@link IllegalArgumentException} unless
 * positive. Immutable; any thread may use it.
 *
 * @param skirtHz how far to either side of the generator the skirts are compared, Hz; empty: as usual
 * @param spanHz how wide the curve is that shows the whole response, from end to end, Hz; empty where the plan does not say
 */
public record Response(OptionalDouble skirtHz, OptionalDouble spanHz) {

    /** Of a stage of which the plan does not say it. */
    public static final Response USUAL = new Response(OptionalDouble.empty(), OptionalDouble.empty());

    public Response {
        if (skirtHz.orElse(1) <= 0 || spanHz.orElse(1) <= 0) {
            throw new IllegalArgumentException("skirts and spans are wider than nothing");
        }
    }
}
