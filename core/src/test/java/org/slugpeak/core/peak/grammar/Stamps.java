package org.slugpeak.core.peak.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.core.reading.Reading;

/** What a transport makes of the times of readings. Their number, order, values and conditions stay. */
public sealed interface Stamps {

    /** The same readings with the stamps that arrive. */
    List<Reading> stamp(List<Reading> readings);

    /** One reading with another stamp. */
    private static Reading at(long tNanos, Reading reading) {
        return new Reading(tNanos, reading.value(), reading.condition());
    }

    /** Every reading has the time at which it was taken. */
    record Exact() implements Stamps {
        @Override
        public List<Reading> stamp(List<Reading> readings) {
            return readings;
        }

        @Override
        public String toString() {
            return "stamped when taken";
        }
    }

    /** So many readings come together when the last of them is there, this far apart; 0 is one stamp for all. */
    record Packets(int readings, long apartNanos) implements Stamps {
        @Override
        public List<Reading> stamp(List<Reading> all) {
            List<Reading> stamped = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                int last = Math.min(i - i % readings + readings, all.size()) - 1;
                stamped.add(at(all.get(last).tNanos() - (last - i) * apartNanos, all.get(i)));
            }
            return stamped;
        }

        @Override
        public String toString() {
            return "packets of " + readings + (apartNanos == 0 ? "" : " spaced by " + apartNanos + " ns");
        }
    }

    /** The clock goes in steps. */
    record Coarse(double stepSeconds) implements Stamps {
        @Override
        public List<Reading> stamp(List<Reading> readings) {
            long stepNanos = Math.round(stepSeconds * 1e9);
            return readings.stream()
                    .map(r -> at(Math.floorDiv(r.tNanos(), stepNanos) * stepNanos, r))
                    .toList();
        }

        @Override
        public String toString() {
            return "stamped to " + Words.seconds(stepSeconds);
        }
    }

    /** Every stamp is late by something between nothing and this: stamps repeat and step back where it exceeds the interval. */
    record Late(double upToSeconds) implements Stamps {
        @Override
        public List<Reading> stamp(List<Reading> readings) {
            SplittableRandom random = new SplittableRandom(Trace.SEED);
            return readings.stream()
                    .map(r -> at(r.tNanos() + Math.round(1e9 * upToSeconds * random.nextDouble()), r))
                    .toList();
        }

        @Override
        public String toString() {
            return "late by up to " + Words.seconds(upToSeconds);
        }
    }
}
