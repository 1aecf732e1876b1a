package org.slugpeak.core.sheet;

import java.util.Comparator;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Seeks the frequency of the greatest response by steps uphill, then by the parabola through the highest three. One thread at a time.
 */
final class TopSearch {

    private static final int MOST_STEPS = 12;

    private final double nearHz;
    private final double stepHz;
    private final TreeMap<Integer, Double> responsesDb = new TreeMap<>();
    private int next;
    private boolean over;

    /**
     * A search.
     *
     * @param nearHz where it begins
     * @param stepHz about half the width of the top
     */
    TopSearch(double nearHz, double stepHz) {
        this.nearHz = nearHz;
        this.stepHz = stepHz;
    }

    /** Which frequency is to be set now; empty where the search is over. */
    OptionalDouble nextHz() {
        return over ? OptionalDouble.empty() : OptionalDouble.of(nearHz + next * stepHz);
    }

    /** What was found at the frequency that was asked for, dB. */
    void take(double responseDb) {
        responsesDb.put(next, responseDb);
        int best = best();
        boolean above = responsesDb.containsKey(best + 1);
        boolean below = responsesDb.containsKey(best - 1);
        over = responsesDb.size() >= MOST_STEPS || (above && below);
        next = above ? best - 1 : best + 1;
    }

    private int best() {
        return responsesDb.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .orElseThrow()
                .getKey();
    }

    /** The best response so far, dB; there must be one. */
    double bestDb() {
        return responsesDb.getOrDefault(best(), Double.NaN);
    }

    /** Where the top lies. */
    double topHz() {
        int best = best();
        double below = responsesDb.getOrDefault(best - 1, Double.NaN);
        double above = responsesDb.getOrDefault(best + 1, Double.NaN);
        double bend = below - 2 * bestDb() + above;
        double off = bend < 0 ? (below - above) / (2 * bend) : 0;
        return nearHz + (best + off) * stepHz;
    }
}
