package org.slugpeak.core.peak.grammar;

/** What the level does during one piece. */
public sealed interface Shape {

    /** The level that reading {@code index} of {@code count} meets. */
    double at(int index, int count);

    /** Whether a meter's noise and last digit leave the level alone. */
    default boolean isExact() {
        return false;
    }

    /** Whether there is no reading at all. */
    default boolean isSilent() {
        return false;
    }

    /** The level stays. */
    record Rest(double level) implements Shape {
        @Override
        public double at(int index, int count) {
            return level;
        }

        @Override
        public String toString() {
            return "rest " + Words.volts(level);
        }
    }

    /** The level goes evenly. */
    record Ramp(double from, double to) implements Shape {
        @Override
        public double at(int index, int count) {
            double part = (index + 1.0) / count;
            return (1 - part) * from + part * to;
        }

        @Override
        public String toString() {
            return "ramp " + Words.volts(from) + " to " + Words.volts(to);
        }
    }

    /** A resonance is crossed evenly, from one place to another; places are half-widths from its top. */
    record Top(double height, double from, double to) implements Shape {
        @Override
        public double at(int index, int count) {
            double part = (index + 1.0) / count;
            return height / Math.hypot(1, (1 - part) * from + part * to);
        }

        @Override
        public String toString() {
            return "top " + Words.volts(height) + " from " + Words.number(from) + " to " + Words.number(to)
                    + " half-widths";
        }
    }

    /** One value, again and again. */
    record Run(double value) implements Shape {
        @Override
        public double at(int index, int count) {
            return value;
        }

        @Override
        public boolean isExact() {
            return true;
        }

        @Override
        public String toString() {
            return value == 0 ? "zeros" : "nothing but " + Words.number(value);
        }
    }

    /** The level jumps half-way. */
    record Step(double from, double to) implements Shape {
        @Override
        public double at(int index, int count) {
            return 2 * index < count ? from : to;
        }

        @Override
        public String toString() {
            return "step " + Words.volts(from) + " to " + Words.volts(to);
        }
    }

    /** The level creeps by so many decibels. */
    record Drift(double level, double db) implements Shape {
        @Override
        public double at(int index, int count) {
            return level * Math.pow(10, db * (index + 1.0) / count / 20);
        }

        @Override
        public String toString() {
            return "drift of " + Words.number(db) + " dB from " + Words.volts(level);
        }
    }

    /** The level stays, but one reading in the middle is so many times what it should be. */
    record Spike(double level, double times) implements Shape {
        @Override
        public double at(int index, int count) {
            return index == count / 2 ? level * times : level;
        }

        @Override
        public String toString() {
            return "spike of " + Words.number(times) + " times " + Words.volts(level);
        }
    }

    /** No readings. */
    record Gap() implements Shape {
        @Override
        public double at(int index, int count) {
            throw new IllegalStateException("there is no reading in a gap");
        }

        @Override
        public boolean isSilent() {
            return true;
        }

        @Override
        public String toString() {
            return "gap";
        }
    }
}
