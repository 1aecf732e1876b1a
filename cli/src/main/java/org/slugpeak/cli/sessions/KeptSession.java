package org.slugpeak.cli.sessions;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.report.Facts;
import org.slugpeak.cli.report.Notice;
import org.slugpeak.cli.report.SessionStory;
import org.slugpeak.cli.words.ReportFact;

/**
 * What the index keeps of one session; all its texts are fit to be shown. Immutable; any thread may use it.
 *
 * @param startedAt wall time of the start
 * @param source the address of the source
 * @param plan its name; empty where there was none
 * @param facts of set, job and workshop, as the log has them
 * @param seconds how long it lasted
 * @param readings how many there were
 * @param whole whether the log was closed properly
 * @param adjusters in the order of their beginning, each once
 */
public record KeptSession(
        Instant startedAt,
        String source,
        String plan,
        Facts facts,
        long seconds,
        long readings,
        boolean whole,
        List<String> adjusters) {

    /** More of one log is not searched. */
    private static final int MOST_SAID = 10_000;

    private static final int MOST_ADJUSTERS = 500;
    private static final int LONGEST_NAME = 200;

    public KeptSession {
        adjusters = List.copyOf(adjusters);
    }

    static KeptSession of(SessionStory story) {
        List<String> adjusters = story.turns().stream()
                .map(turn -> shortened(turn.adjuster()))
                .distinct()
                .limit(MOST_ADJUSTERS)
                .toList();
        return new KeptSession(
                story.start().startedAt(),
                shortened(story.start().source()),
                shortened(story.plan()),
                story.facts(),
                Math.round(story.lengthNanos() / 1e9),
                story.levels().count(),
                story.ending().isEmpty(),
                adjusters);
    }

    /** What was warned of and noted in a session, for searching; what the hand was to do is looked for by nobody, and most of a log. */
    static String said(SessionStory story) {
        Stream<String> told = story.notices().stream().filter(Notice::lasting).map(Notice::text);
        String said = Stream.concat(told, story.safety().stream())
                .map(SafeText::line)
                .distinct()
                .collect(Collectors.joining("; "));
        return said.substring(0, Math.min(said.length(), MOST_SAID));
    }

    private static String shortened(String text) {
        String safe = SafeText.line(text);
        return safe.substring(0, Math.min(safe.length(), LONGEST_NAME));
    }

    /** What the set is called: maker and model where they are known, else the plan; empty where nothing is. */
    public String set() {
        String told = Stream.of(ReportFact.MAKER, ReportFact.MODEL)
                .map(facts::text)
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return told.isEmpty() ? plan : told;
    }

    /** The number of the set; empty where it is not known. */
    public String serial() {
        return facts.text(ReportFact.SERIAL).orElse("");
    }

    /** Everything that a text may be found in, in small letters. */
    String words(String file, String said) {
        return small(Stream.of(
                        Stream.of(file, source, plan),
                        facts.given().values().stream(),
                        adjusters.stream(),
                        Stream.of(said))
                .flatMap(each -> each)
                .collect(Collectors.joining("\n")));
    }

    static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
