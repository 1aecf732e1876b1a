package org.slugpeak.core.session;

import org.slugpeak.core.signal.ClippingCause;

/**
 * What is heard of audio beside its level. Immutable; any thread may use it.
 */
public sealed interface Sound extends SessionRecord
        permits Sound.Tone,
                Sound.NoTone,
                Sound.PerhapsHum,
                Sound.HumUnderTone,
                Sound.Purity,
                Sound.Distorted,
                Sound.OutputReached,
                Sound.Clips {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.sound(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.sound(this);
    }

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind of this family
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind of this family, so that none can be forgotten.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For a Tone.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R tone(Tone it);

        /**
         * For a NoTone.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R noTone(NoTone it);

        /**
         * For a PerhapsHum.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R perhapsHum(PerhapsHum it);

        /**
         * For a HumUnderTone.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R humUnderTone(HumUnderTone it);

        /**
         * For a Purity.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R purity(Purity it);

        /**
         * For a Distorted.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R distorted(Distorted it);

        /**
         * For an OutputReached.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R outputReached(OutputReached it);

        /**
         * For a Clips.
         *
         * @param it the record
         * @return what the caller of {@link Sound#match(Matcher)} gets
         */
        R clips(Clips it);
    }

    /**
     * A tone was found.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz its frequency, Hz
     * @param latencySeconds how far back a reading looks
     * @param bandwidthHz noise bandwidth, Hz
     */
    record Tone(long tNanos, double hz, double latencySeconds, double bandwidthHz) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.tone(this);
        }
    }

    /**
     * No tone is heard where one should be.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record NoTone(long tNanos) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.noTone(this);
        }
    }

    /**
     * What is heard cannot be told from hum.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param mainsHz frequency of the mains as its hum tells; NaN if not known
     */
    record PerhapsHum(long tNanos, double mainsHz) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.perhapsHum(this);
        }
    }

    /**
     * The tone stands on a harmonic of the mains.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param harmonic which
     * @param mainsHz frequency of the mains, Hz
     * @param errorDb by how much hum may shift the reading, dB
     */
    record HumUnderTone(long tNanos, int harmonic, double mainsHz, double errorDb) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.humUnderTone(this);
        }
    }

    /**
     * How clean the tone is.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param sinadDb signal, noise and distortion over noise and distortion, dB
     * @param distortion ratio of harmonics to tone, 0 to 1
     * @param humBelowDb how far the hum is below the tone, dB; NaN where none is seen
     */
    record Purity(long tNanos, double sinadDb, double distortion, double humBelowDb) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.purity(this);
        }
    }

    /**
     * The tone is distorted so much that the set may be overdriven.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param distortion ratio of harmonics to tone, 0 to 1
     */
    record Distorted(long tNanos, double distortion) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.distorted(this);
        }
    }

    /**
     * A standard output power is reached.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param standardMilliwatts which standard
     * @param milliwatts what is measured
     */
    record OutputReached(long tNanos, double standardMilliwatts, double milliwatts) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.outputReached(this);
        }
    }

    /**
     * Something clips.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param cause what
     */
    record Clips(long tNanos, ClippingCause cause) implements Sound {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.clips(this);
        }
    }
}
