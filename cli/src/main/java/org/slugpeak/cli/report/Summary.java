package org.slugpeak.cli.report;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.slugpeak.cli.words.ReportPhrase;

/** The sentences at the head of a session. */
final class Summary {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern(
                    "d MMMM uuuu, HH:mm 'UTC'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);

    private Summary() {}

    static String title(SessionStory story) {
        if (!story.plan().isEmpty()) {
            return story.plan();
        }
        String source = story.start().source();
        return source.equals("sim") || source.startsWith("sim:") ? ReportPhrase.SIMULATED.of() : story.name();
    }

    static List<String> lines(SessionStory story) {
        String when = ReportPhrase.WHEN.of(DATE.format(story.start().startedAt()), Numbers.clock(story.lengthNanos()));
        String ending = story.ending().isEmpty() ? "" : ReportPhrase.NOTE.of(story.ending());
        return List.of(when, ReportPhrase.LOG.of(story.name()), gain(story), ending).stream()
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** The sum of what was gained; only adjusters that are done count. */
    private static String gain(SessionStory story) {
        double sum = story.turns().stream()
                .filter(turn -> turn.ending().isPresent() && !Double.isNaN(turn.gainDb()))
                .mapToDouble(Turn::gainDb)
                .sum();
        long done =
                story.turns().stream().filter(turn -> turn.ending().isPresent()).count();
        return done == 0 ? "" : ReportPhrase.GAINED.of(Gain.signed(sum), done);
    }
}
