package org.slugpeak.cli.moment;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;

/** Puts a moment into words: what each part of a display and each line says. Stateless. */
public final class MomentWords {

    private MomentWords() {}

    /**
     * The reading itself; dashes while there is none to be believed.
     *
     * @param moment as it is
     * @return digits and unit
     */
    public static Figures.Figure reading(Moment moment) {
        Level level = moment.level();
        if (level.condition() == Condition.OVER_RANGE) {
            return new Figures.Figure(ScreenPhrase.OVER.of(), "");
        }
        if (moment.link().isPresent() || Double.isNaN(level.value())) {
            return new Figures.Figure("----", "");
        }
        return Figures.of(level.value(), size(moment), moment.unit());
    }

    /**
     * What the digits of a reading are counted by.
     *
     * @param moment as it is
     * @return in the unit of the readings; NaN where nothing is known of it
     */
    public static double size(Moment moment) {
        return moment.seek().seeksStrongest()
                ? moment.level().best()
                : Math.max(moment.level().swing(), Math.abs(moment.level().value()));
    }

    /**
     * What is wrong, in the order of urgency; empty when nothing is.
     *
     * @param moment as it is
     * @return one line
     */
    public static String alarm(Moment moment) {
        return Stream.of(moment.link(), moment.overload())
                .flatMap(Optional::stream)
                .collect(Collectors.joining("  +  "));
    }

    /**
     * The one word, or the few, that are read from across the bench.
     *
     * @param moment as it is
     * @return in capitals, with the tenths of a decibel on the way back
     */
    public static String word(Moment moment) {
        Act act = moment.act();
        return switch (act) {
            case BACK -> act.word() + howFar(moment.level().distanceDb());
            case DO, WAIT ->
                moment.toDo().map(ToDo::brief).filter(brief -> !brief.isEmpty()).orElse(act.word());
            default -> act.word();
        };
    }

    private static String howFar(double distanceDb) {
        return distanceDb < Level.FARTHEST_DB ? String.format(Locale.ROOT, " %.1f", distanceDb) : "";
    }

    /**
     * What is wrong; else what is asked for; else the verdict.
     *
     * @param moment as it is
     * @return one line
     */
    public static String sentence(Moment moment) {
        String alarm = alarm(moment);
        return alarm.isEmpty() ? moment.toDo().map(ToDo::text).orElseGet(() -> verdict(moment)) : alarm;
    }

    /**
     * The verdict, with the distance as it is now.
     *
     * @param moment as it is
     * @return one line
     */
    public static String verdict(Moment moment) {
        boolean counts = moment.verdict().counted() && !moment.level().isNearing(moment.seek());
        if (moment.verdict().act() == Act.BACK && !counts) {
            return SeekWords.of(moment.seek()).past(moment.level().distanceDb());
        }
        return moment.verdict().sentence();
    }

    /**
     * Which way the reading goes, and whether that is nearer.
     *
     * @param moment as it is
     * @return a few words; empty where nothing is sought that it could be nearer to
     */
    public static String trend(Moment moment) {
        if (!SeekWords.of(moment.seek()).compares(moment)) {
            return "";
        }
        Trend trend = moment.level().trend();
        String word = CodeWords.of(trend.code());
        if (trend == Trend.STEADY) {
            return word;
        }
        return (moment.level().isNearing(moment.seek()) ? ScreenPhrase.CLOSER : ScreenPhrase.FURTHER).of(word);
    }

    /**
     * Percent, decibels and the best itself.
     *
     * @param moment as it is
     * @return one line
     */
    public static String facts(Moment moment) {
        return SeekWords.of(moment.seek()).facts(moment);
    }

    /**
     * How far the reading is from what is sought, for a line that has nothing else to say it with.
     *
     * @param moment as it is
     * @return a few words
     */
    public static String distance(Moment moment) {
        return SeekWords.of(moment.seek()).distance(moment);
    }

    /**
     * The best itself, to follow on the distance, for whoever has no room to see it.
     *
     * @param moment as it is
     * @return empty where there is none, and for a zero
     */
    public static String best(Moment moment) {
        return SeekWords.of(moment.seek()).best(moment);
    }
}
