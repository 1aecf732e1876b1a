package org.slugpeak.cli.page;

import java.util.Optional;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.moment.Warning;
import org.slugpeak.core.peak.Trend;

/**
 * What is told, in the words of the terminal; worded in the thread of the browser that is told, and not in that of the session. Immutable; any
 * thread may use it.
 *
 * @param moment as it is
 * @param tone what is heard
 */
record Told(Moment moment, Overheard.Tone tone) {

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

    /** What calls for attention. */
    Optional<Called> called() {
        return moment.called();
    }

    /** Where a reading stands in the trend: up is more, whatever its sign, unless a zero is sought, or nothing. */
    double height(double value) {
        boolean signed = !moment.level().hasBest();
        return signed ? value : Math.abs(value);
    }

    /** In words. */
    Face face() {
        String alarm = MomentWords.alarm(moment);
        String trend = MomentWords.trend(moment);
        return new Face(
                moment.act(),
                MomentWords.word(moment),
                alarm.isEmpty() ? MomentWords.sentence(moment) : "",
                MomentWords.reading(moment),
                trend.isEmpty() ? "" : MomentWords.facts(moment),
                moment.level().trend(),
                trend,
                moment.adjuster(),
                moment.source(),
                alarm,
                moment.warning().map(Warning::text).orElse(""),
                moment.note().map(Moment.Note::text).orElse(""),
                height(moment.level().best()));
    }
}
