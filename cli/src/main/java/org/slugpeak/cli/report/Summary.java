package org.slugpeak.cli.report;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.session.Gains;

/** The sentences at the head of a session. */
final class Summary {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm z", Locale.ENGLISH);

    private Summary() {}

    static String title(SessionStory story) {
        if (!story.plan().isEmpty()) {
            return story.plan();
        }
        String source = story.start().source();
        return source.equals("sim") || source.startsWith("sim:") ? ReportPhrase.SIMULATED.of() : story.name();
    }

    static String date(SessionStory story, ZoneId zone) {
        return DATE.format(story.start().startedAt().atZone(zone));
    }

    static List<String> lines(SessionStory story, ZoneId zone) {
        String when = ReportPhrase.WHEN.of(date(story, zone), Numbers.clock(story.lengthNanos()));
        String ending = story.ending().isEmpty() ? "" : ReportPhrase.NOTE.of(story.ending());
        List<String> lines = new ArrayList<>(List.of(when, ReportPhrase.LOG.of(story.name())));
        lines.addAll(gains(story));
        lines.add(ending);
        lines.removeIf(String::isEmpty);
        return lines;
    }

    private static List<String> gains(SessionStory story) {
        Gains gains = story.gains();
        List<String> lines = new ArrayList<>();
        gains.sums().forEach(sum -> lines.add(gain(sum)));
        String unit = story.start().measurand().unit();
        gains.zeros()
                .forEach(zero ->
                        lines.add(ReportPhrase.ZERO_LEFT.of(zero.adjuster(), Numbers.withUnit(zero.level(), unit))));
        return lines.isEmpty() && gains.adjustments() > 0
                ? List.of(ReportPhrase.ADJUSTMENTS.of(gains.adjustments()))
                : lines;
    }

    private static String gain(Gains.Sum sum) {
        String gained = Gain.signed(sum.gainDb());
        return sum.path().isEmpty()
                ? ReportPhrase.GAINED.of(gained, sum.adjustments())
                : ReportPhrase.GAINED_ALONG.of(sum.path(), gained, sum.adjustments());
    }
}
