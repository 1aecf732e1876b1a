package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.receiver.Superhet;

/**
 * A place of the dial at which a receiver is measured. Immutable; any thread may use it.
 *
 * @param dialHz where the set is tuned, Hz
 * @param receiver intermediate frequency to which the signal is converted first, and the side of the oscillator
 * @param narrowestHz the lowest intermediate frequency of the set, Hz, whose circuits are the narrowest
 * @param setup how generator and meter are connected
 * @param wanted what is measured here beside the sensitivity
 */
public record Station(double dialHz, Superhet receiver, double narrowestHz, Setup setup, Set<FigureKind> wanted) {

    public Station {
        wanted = Set.copyOf(wanted);
    }

    /**
     * Where the generator goes, the stretches beside these left out.
     *
     * @return Hz: the signal, and what is to be rejected
     */
    public List<Double> frequenciesHz() {
        List<Double> all = new ArrayList<>(List.of(dialHz));
        double imageHz = receiver.imageHz(dialHz);
        if (wants(FigureKind.IMAGE_REJECTION) && imageHz > 0) {
            all.add(imageHz);
        }
        if (wants(FigureKind.IF_REJECTION)) {
            all.add(receiver.intermediateHz());
        }
        return all;
    }

    /**
     * Whether a figure is measured here.
     *
     * @param kind of it
     * @return true where it is
     */
    public boolean wants(FigureKind kind) {
        return wanted.contains(kind);
    }
}
