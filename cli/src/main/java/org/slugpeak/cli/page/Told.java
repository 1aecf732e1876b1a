package org.slugpeak.cli.page;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.CurveMoment;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.moment.Warning;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Trend;

/** What is told, in the words of the terminal; worded in the thread of the browser that is told, and not in that of the session. */
interface Told {

    /** In words. */
    Face face();

    /** What calls for attention. */
    Optional<Called> called();

    /** Where a reading stands in the trend: up is more, whatever its sign, unless a zero is sought. */
    double height(double value);

    /** What is heard. */
    Overheard.Tone tone();

    /**
     * The words of one moment.
     *
     * @param act what the hand is to do, for the sign beside the word
     * @param word the same, to be read from across the bench
     * @param line one sentence; empty where an alarm stands in its place
     * @param reading digits and unit
     * @param facts where the reading stands
     * @param trend which way it goes
     * @param trendWords the same in words
     * @param title the adjuster, or the point of a curve
     * @param source where the readings come from
     * @param alarm what is wrong; may be empty
     * @param warning what stands until it is answered; may be empty
     * @param note a remark; may be empty
     * @param best what the trend is compared with, in the unit of the readings; NaN where there is none
     */
    record Face(
            Act act,
            String word,
            String line,
            Figures.Figure reading,
            String facts,
            Trend trend,
            String trendWords,
            String title,
            String source,
            String alarm,
            String warning,
            String note,
            double best) {}

    /** Something is turned. */
    record OfSession(Moment moment, Overheard.Tone tone) implements Told {

        @Override
        public Optional<Called> called() {
            return moment.called();
        }

        @Override
        public double height(double value) {
            return switch (moment.seek()) {
                case PEAK, DIP -> Math.abs(value);
                case ZERO -> value;
            };
        }

        @Override
        public Face face() {
            String alarm = MomentWords.alarm(moment);
            return new Face(
                    moment.act(),
                    MomentWords.word(moment),
                    alarm.isEmpty() ? MomentWords.sentence(moment) : "",
                    MomentWords.reading(moment),
                    MomentWords.facts(moment),
                    moment.level().trend(),
                    MomentWords.trend(moment),
                    moment.adjuster(),
                    moment.source(),
                    alarm,
                    moment.warning().map(Warning::text).orElse(""),
                    moment.note().map(Moment.Note::text).orElse(""),
                    height(moment.level().best()));
        }
    }

    /**
     * The generator is stepped.
     *
     * @param moment of the curve
     * @param called the last point that was taken
     */
    record OfCurve(CurveMoment moment, Optional<Called> called) implements Told {

        @Override
        public Overheard.Tone tone() {
            return Overheard.Tone.ofPoints(called.map(Called::number).orElse(0L));
        }

        @Override
        public double height(double value) {
            return value;
        }

        @Override
        public Face face() {
            boolean trusted = moment.alarm().isEmpty();
            String setting = Double.isNaN(moment.frequencyHz())
                    ? ScreenPhrase.WAIT.of()
                    : String.format(Locale.ROOT, "%.2f kHz", moment.frequencyHz() / 1e3);
            return new Face(
                    trusted ? Act.DO : Act.OVERLOAD,
                    setting,
                    moment.todo(),
                    Figures.of(moment.reading(), moment.reading(), moment.unit()),
                    "",
                    Trend.STEADY,
                    "",
                    moment.point(),
                    moment.source(),
                    moment.alarm().orElse(""),
                    "",
                    moment.note(),
                    Double.NaN);
        }

        /** One more point was taken. */
        static Called taken(Optional<Called> before, long tNanos) {
            return new Called(before.map(Called::number).orElse(0L) + 1, tNanos, Call.BEGIN);
        }
    }
}
