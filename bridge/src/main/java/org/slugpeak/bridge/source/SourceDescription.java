package org.slugpeak.bridge.source;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** What answers at the other end of a {@link ReadingSource}. Immutable; any thread may use it. */
public sealed interface SourceDescription {

    /**
     * One case for each kind.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For an instrument.
         *
         * @param it the description
         * @return what the caller of {@link SourceDescription#match(Matcher)} gets
         */
        R instrument(Instrument it);

        /**
         * For lines of text.
         *
         * @param it the description
         * @return what the caller of {@link SourceDescription#match(Matcher)} gets
         */
        R text(Text it);

        /**
         * For sound.
         *
         * @param it the description
         * @return what the caller of {@link SourceDescription#match(Matcher)} gets
         */
        R audio(Audio it);

        /**
         * For a session log.
         *
         * @param it the description
         * @return what the caller of {@link SourceDescription#match(Matcher)} gets
         */
        R log(Log it);

        /**
         * For a simulated bench.
         *
         * @param it the description
         * @return what the caller of {@link SourceDescription#match(Matcher)} gets
         */
        R simulation(Simulation it);
    }

    /**
     * An instrument.
     *
     * @param name what it says of itself, or else the title that its description gives it; one line, never empty
     */
    record Instrument(String name) implements SourceDescription {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.instrument(this);
        }
    }

    /**
     * Lines of text.
     *
     * @param file that they are in; empty for standard input
     * @param column the name of the column of readings, shortened and printable; empty without a header line
     * @param unit of the readings; empty where none was told, and for ratios
     * @param fromDecibels whether they were turned from decibels into what they stand for
     */
    record Text(Optional<String> file, String column, String unit, boolean fromDecibels) implements SourceDescription {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.text(this);
        }
    }

    /**
     * Sound.
     *
     * @param name of the file, or of the sound input
     * @param fileSeconds how long the file is; empty for a sound input
     * @param rateHz samples of each channel a second
     * @param channels how many there are
     * @param bits of each sample
     * @param floating whether samples are floating-point numbers
     * @param voltsPerFullScale RMS voltage of a full-scale sine; empty where nobody knows it
     */
    record Audio(
            String name,
            OptionalDouble fileSeconds,
            int rateHz,
            int channels,
            int bits,
            boolean floating,
            OptionalDouble voltsPerFullScale)
            implements SourceDescription {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.audio(this);
        }
    }

    /**
     * A session log.
     *
     * @param file that it is
     * @param startedAt wall time of the recording
     * @param source where its readings came from, as the user gave it
     */
    record Log(String file, Instant startedAt, String source) implements SourceDescription {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.log(this);
        }
    }

    /**
     * A simulated bench.
     *
     * @param set the name of the invented set, or of the plan that one was made up from
     * @param madeUp whether it was made up from a plan
     * @param meter what reads it
     */
    record Simulation(String set, boolean madeUp, MeterKind meter) implements SourceDescription {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.simulation(this);
        }
    }

    /** What reads a simulated set. */
    enum MeterKind {
        /** A slow multimeter that changes range by itself. */
        MULTIMETER,
        /** An ADC board behind a divider of 10 Mohm. */
        CONVERTER,
        /** The same without its divider, so that it loads the set. */
        LOADING_CONVERTER,
        /** A sound card at the voice coil. */
        SOUND_CARD
    }
}
