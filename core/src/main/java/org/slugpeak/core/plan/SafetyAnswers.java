package org.slugpeak.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What the user says about the dangers of the bench before anything is connected. Local codes and licensed practice come
 * first. Immutable; any thread may use it.
 *
 * @param chassis what the chassis is tied to; an autotransformer ties it to the mains
 * @param isolationTransformer whether the set, and nothing else, is on an isolation transformer
 * @param earthed whether any lead ties the set to mains earth: that of the computer, unless its port is isolated or it is a laptop
 *     on its battery; the return of the generator, of an oscilloscope, of an aerial
 * @param leadsFitted whether the generator's lead has a blocking capacitor and the meter's lead a divider or resistor: a capacitor
 *     there would let no direct voltage pass
 */
public record SafetyAnswers(Chassis chassis, boolean isolationTransformer, boolean earthed, boolean leadsFitted) {

    /** What may stand between a person and the work. */
    public enum Danger {
        /** The chassis may stand at full mains. */
        LIVE_CHASSIS,
        /** A lead ties a chassis that may be live to earth. */
        EARTHED_LEAD,
        /** High tension may come out of the leads. */
        OPEN_LEADS
    }

    /**
     * What must be put right first.
     *
     * @return in order; empty where nothing speaks against beginning
     */
    public List<Danger> dangers() {
        List<Danger> dangers = new ArrayList<>();
        if (mayBeLive() && !isolationTransformer) {
            dangers.add(Danger.LIVE_CHASSIS);
        }
        if (mayBeLive() && earthed) {
            dangers.add(Danger.EARTHED_LEAD);
        }
        if (!leadsFitted) {
            dangers.add(Danger.OPEN_LEADS);
        }
        return List.copyOf(dangers);
    }

    /**
     * Whether the chassis may be tied to the mains. There the capacitor in the generator's lead stands between the mains and a
     * person, so its leakage is limited, too (IEC 60384-14: class Y).
     *
     * @return false behind a mains transformer only
     */
    public boolean mayBeLive() {
        return chassis != Chassis.TRANSFORMER;
    }
}
