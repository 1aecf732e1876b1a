package org.slugpeak.bridge.frame;

/** What one frame says. Immutable. */
sealed interface MeterFrame {

    /** One case for each kind. */
    <T> T match(Matcher<T> matcher);

    /** What to do for each kind of frame. */
    interface Matcher<T> {

        T volts(Volts frame);

        T beyond(Beyond frame);

        T other(Other frame);

        T refused(Refused frame);
    }

    /**
     * A voltage.
     *
     * @param volts as shown
     * @param alternating whether it is AC
     * @param doubt why it is no live reading, in words behind "the meter"; empty where it is one
     * @param lowBattery whether the battery is low
     */
    record Volts(double volts, boolean alternating, String doubt, boolean lowBattery) implements MeterFrame {
        @Override
        public <T> T match(Matcher<T> matcher) {
            return matcher.volts(this);
        }
    }

    /**
     * A voltage for which there is no number.
     *
     * @param over whether it is over the range; else under it, or else not to be had
     * @param alternating whether it is AC
     */
    record Beyond(boolean over, boolean alternating) implements MeterFrame {
        @Override
        public <T> T match(Matcher<T> matcher) {
            return matcher.beyond(this);
        }
    }

    /**
     * Something else than a voltage.
     *
     * @param words what
     */
    record Other(String words) implements MeterFrame {
        @Override
        public <T> T match(Matcher<T> matcher) {
            return matcher.other(this);
        }
    }

    /**
     * No frame of this family, or a damaged one.
     *
     * @param framed whether its fixed bytes were right
     * @param why one line
     */
    record Refused(boolean framed, String why) implements MeterFrame {
        @Override
        public <T> T match(Matcher<T> matcher) {
            return matcher.refused(this);
        }
    }
}
