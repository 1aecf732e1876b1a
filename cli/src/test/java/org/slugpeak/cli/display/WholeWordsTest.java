package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.testkit.EveryRecord;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Manner;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** Whatever is asked, and whatever is found: all of it, its first clause or its short form stands there, and no word of that is broken. */
class WholeWordsTest {

    private static final List<Request> ASKING = EveryRecord.list().stream()
            .filter(Request.class::isInstance)
            .map(Request.class::cast)
            .filter(request -> request.manner() == Manner.ASKS)
            .toList();

    /** Header, and one row for a remark in a small window. */
    private static final int BELOW_REMARK = 2;

    private static final Page PAGE = new Page(Symbols.BLOCKS, List.of(new KeyHint(KeyAction.DONE, "d")));

    private static Moment moment(SessionRecord... records) {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        Stream.of(records).forEach(keeper::take);
        return keeper.moment();
    }

    private static boolean isWhole(Grid grid, String form) {
        return Arrays.stream(form.split(" +")).allMatch(word -> stands(grid, word));
    }

    /** In a window that is too small for all of it, which says so. */
    private static boolean isCutBetweenWords(Grid grid, String all) {
        List<String> rows = grid.lines().stream()
                .map(line -> line.substring(1, line.length() - 1).strip())
                .toList();
        int end = rows.indexOf(ScreenPhrase.MORE.of());
        List<String> words = List.of(all.split(" +"));
        return end > 0
                && rows.subList(BELOW_REMARK, end).stream()
                        .flatMap(line -> Stream.of(line.split(" +")))
                        .allMatch(words::contains);
    }

    private static boolean stands(Grid grid, String word) {
        String capitals = word.toUpperCase(Locale.ROOT);
        return Stream.of(1, 2, 3).anyMatch(scale -> BlockText.stands(grid, capitals, scale))
                || grid.lines().stream()
                        .flatMap(line -> Stream.of(line.split(" +")))
                        .anyMatch(word::equals);
    }

    @ParameterizedTest
    @CsvSource({"34,10", "40,12", "60,18", "80,24", "132,43", "200,60"})
    void noWordOfAQuestionIsBroken(int width, int height) {
        for (Request request : ASKING) {
            Moment moment = moment(Sessions.reading(0, 0.5, 0.5, Trend.STEADY), request);
            Grid grid = PAGE.draw(moment, Aside.NONE, width, height);
            String all = MomentWords.sentence(moment);
            boolean form = Stream.of(all, all.split("[,;:] ", 2)[0], MomentWords.word(moment))
                    .anyMatch(it -> isWhole(grid, it));
            boolean whole = form || isCutBetweenWords(grid, all);
            assertTrue(
                    whole, () -> request + " at " + width + " by " + height + "\n" + String.join("\n", grid.lines()));
        }
        assertTrue(ASKING.size() > 15);
    }

    @ParameterizedTest
    @CsvSource({"40,12", "60,18", "80,24", "200,60"})
    void toHalveTheGeneratorIsLargeInEveryWindowAndTheReadingStays(int width, int height) {
        Moment moment = moment(
                Sessions.reading(1, 1.5, 1.5, Trend.RISING), new Request.CutGenerator(Sessions.seconds(1), 0.5, -0.88));
        Grid grid = PAGE.draw(moment, Aside.NONE, width, height);
        boolean large = Stream.of(1, 2, 3).anyMatch(scale -> BlockText.stands(grid, "HALVE", scale));
        assertTrue(large, () -> String.join("\n", grid.lines()));
        assertTrue(
                BlockText.stands(grid, "1.500", 1)
                        || String.join("", grid.lines()).contains("1.500 V"),
                () -> String.join("\n", grid.lines()));
    }

    @ParameterizedTest
    @CsvSource({"34,10", "40,12", "60,18"})
    void noWordOfAVerdictIsCut(int width, int height) {
        Moment moment =
                moment(Sessions.reading(1, 1.446, 1.447, Trend.STEADY), new Held(Sessions.seconds(3), 1.446, 0.01));
        String sentence = MomentWords.sentence(moment);
        Grid grid = PAGE.draw(moment, Aside.NONE, width, height);
        String row = grid.lines().stream()
                .filter(line -> line.startsWith(" held: recorded"))
                .findFirst()
                .orElseThrow();
        assertTrue((sentence + " ").startsWith(row.strip() + " "), row);
    }
}
