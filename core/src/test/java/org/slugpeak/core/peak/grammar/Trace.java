package org.slugpeak.core.peak.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.slugpeak.core.reading.Reading;

/**
 * A stream of readings, told by its pieces. The same pieces always give the same readings, noise included.
 *
 * @param pieces one after the other
 */
public record Trace(List<Piece> pieces) {

    static final long SEED = 20261125;

    public Trace {
        pieces = List.copyOf(pieces);
    }

    /** The readings as they arrive. */
    public List<Reading> readings() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Reading> all = new ArrayList<>();
        double seconds = 0;
        for (Piece piece : pieces) {
            all.addAll(piece.readings(seconds, random));
            seconds += piece.seconds();
        }
        return all;
    }

    /** How long the stream goes on. */
    public double seconds() {
        return pieces.stream().mapToDouble(Piece::seconds).sum();
    }

    /** The same readings, each with the time at which it was taken. */
    public Trace exactlyStamped() {
        return new Trace(pieces.stream().map(p -> p.over(new Stamps.Exact())).toList());
    }

    /** This, and another piece after it. */
    public Trace then(Piece piece) {
        List<Piece> more = new ArrayList<>(pieces);
        more.add(piece);
        return new Trace(more);
    }

    @Override
    public String toString() {
        return pieces.stream().map(Piece::toString).collect(Collectors.joining("; "));
    }
}
