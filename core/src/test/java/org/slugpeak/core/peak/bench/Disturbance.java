package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/** What happens to a level on its way to a reading; it has its own memory, so times must not go back. */
interface Disturbance {

    /**
     * Reads a level.
     *
     * @param seconds when
     * @param level free of everything; 1 at the top
     * @return the reading
     */
    double read(double seconds, double level);

    /** Makes a disturbance that has not begun. */
    interface Maker {
        /**
         * Makes one.
         *
         * @param random for this one alone
         * @param rate readings per second, for those that average over the time of a reading
         */
        Disturbance make(SplittableRandom random, double rate);
    }

    /** White and normal, one sigma as part of the top. */
    static Maker white(double sigma) {
        return (random, rate) -> (seconds, level) -> level + sigma * random.nextGaussian();
    }

    /** Some readings are wild, as a loose plug or a switch makes them; the others go on as before. */
    static Maker spikes(double part, Maker rest) {
        return (random, rate) -> {
            Disturbance inner = rest.make(random, rate);
            return (seconds, level) -> {
                double value = inner.read(seconds, level);
                return random.nextDouble() < part ? value * (1 + random.nextDouble(-1, 2)) : value;
            };
        };
    }

    /** A sine of this part of the reading, at a phase left to chance. */
    static Maker tone(double part, double hertz) {
        return (random, rate) -> {
            double phase = random.nextDouble(2 * Math.PI);
            return (seconds, level) -> level * (1 + part * Math.sin(2 * Math.PI * hertz * seconds + phase));
        };
    }

    /** The same with the last percent of the frequency left to chance too: no beat is a round number. */
    static Maker beat(double part, double hertz) {
        return (random, rate) ->
                tone(part, hertz * (1 + 0.01 * random.nextGaussian())).make(random, rate);
    }

    /** Rounded to digits of this size, as part of the top. */
    static Maker rounded(double digit) {
        return (random, rate) -> (seconds, level) -> digit * Math.rint(level / digit);
    }

    /**
     * A meter's last digit, as part of the top. A tenth of a digit of noise makes it flicker: the level lies within two tenths of where
     * one digit gives way to the next.
     */
    static Maker lastDigit(double digit) {
        return (random, rate) -> {
            double top = Math.rint(1 / digit) + 0.5 + random.nextDouble(-0.2, 0.2);
            return (seconds, level) -> digit * Math.rint(level * top + 0.1 * random.nextGaussian());
        };
    }

    /** One after the other. */
    default Disturbance then(Disturbance next) {
        return (seconds, level) -> next.read(seconds, read(seconds, level));
    }

    /** One after the other, made anew each time. */
    static Maker both(Maker first, Maker second) {
        return (random, rate) -> first.make(random, rate).then(second.make(random, rate));
    }
}
