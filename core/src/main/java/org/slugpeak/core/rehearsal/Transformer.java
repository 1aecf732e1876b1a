package org.slugpeak.core.rehearsal;

import java.util.List;
import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.SingleTuned;
import org.slugpeak.core.receiver.Tank;

/** One or two windings between two valves of an IF strip. One thread at a time. */
final class Transformer implements StripPart {

    private final List<Winding> windings;
    private final double coupling;

    /** With two windings, the driven one first, and their coefficient of coupling; or one, for which it says nothing. */
    Transformer(List<Winding> windings, double coupling) {
        this.windings = List.copyOf(windings);
        this.coupling = coupling;
    }

    @Override
    public List<Winding> windings() {
        return windings;
    }

    /** The two windings as they stand now. */
    CoupledPair pair() {
        return new CoupledPair(windings.get(0).now(), windings.get(1).now(), coupling);
    }

    @Override
    public double response(double hz) {
        Tank first = windings.get(0).now();
        if (windings.size() == 1) {
            return new SingleTuned(first.resonanceHz(), first.q()).response(hz).abs()
                    * first.q()
                    / windings.get(0).tuned().q();
        }
        return pair().transimpedance(hz).abs() / inTune();
    }

    /** One winding's width, which is near that of a pair. */
    @Override
    public double widthHz() {
        Tank tuned = windings.get(0).tuned();
        return tuned.resonanceHz() / tuned.q();
    }

    /** The two windings in their working positions. */
    CoupledPair tuned() {
        return new CoupledPair(windings.get(0).tuned(), windings.get(1).tuned(), coupling);
    }

    private double inTune() {
        CoupledPair tuned = tuned();
        return tuned.transimpedance(tuned.primary().resonanceHz()).abs();
    }
}
