package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

class PageTest {

    private static final RecordSentences WORDS = new RecordSentences();

    private static final List<KeyHint> KEYS = KeyBindings.usual()
            .hints(EnumSet.of(
                    KeyAction.MARK,
                    KeyAction.NEXT,
                    KeyAction.AGAIN,
                    KeyAction.SOUND,
                    KeyAction.LOUDER,
                    KeyAction.SOFTER,
                    KeyAction.QUIT));

    private final Page page = new Page(Symbols.BLOCKS, KEYS);

    private static Moment moment(Seek seek, SessionRecord... records) {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(seek));
        keeper.take(new Adjuster(0, "T2 bottom", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
        Stream.of(records).forEach(keeper::take);
        return keeper.moment();
    }

    private static Moment past() {
        return moment(
                Seek.PEAK,
                reading(1, 0.870, 0.870, Trend.RISING),
                new Passed(Sessions.seconds(2), 0.870, Sessions.seconds(1), 0.3),
                reading(2, 0.812, 0.870, Trend.FALLING));
    }

    private String text(Moment moment, int width, int height) {
        return String.join(
                "\n",
                page.draw(moment, Aside.NONE.withStatus("sound 5"), width, height)
                        .lines());
    }

    @ParameterizedTest
    @CsvSource({
        "40,12,0,1,BACK",
        "60,18,1,1,BACK 0.6",
        "80,24,2,1,BACK 0.6",
        "100,30,2,1,BACK 0.6",
        "120,40,3,2,BACK 0.6",
        "160,50,4,2,BACK 0.6",
        "200,60,5,3,BACK 0.6"
    })
    void readingAndVerdictGrowWithTheWindow(int width, int height, int digitScale, int callScale, String word) {
        Grid grid = page.draw(past(), Aside.NONE, width, height);
        Supplier<String> drawn = () -> String.join("\n", grid.lines());
        assertTrue(digitScale == 0 || BlockText.stands(grid, "0.812", digitScale), drawn);
        assertTrue(digitScale > 0 || drawn.get().contains("0.812 V"), drawn);
        assertTrue(BlockText.stands(grid, word, callScale), drawn);
        assertTrue(BlockText.stands(grid, String.valueOf(Signs.shape(Act.BACK)), callScale), drawn);
    }

    @ParameterizedTest
    @CsvSource({"40,12", "60,18", "80,24", "120,40", "200,60", "97,31"})
    void everySizeSaysWhatMatters(int width, int height) {
        String text = text(past(), width, height);
        Stream.of(
                        "T2 bottom",
                        "sim",
                        "sound 5",
                        "past it: back, 0.6 dB",
                        "93.3 %",
                        "0.60 dB below best 0.870 V",
                        "BEST",
                        "falling: further",
                        "space mark",
                        "r next",
                        "q quit")
                .forEach(words -> assertTrue(text.contains(words), () -> words + " is missing in\n" + text));
    }

    @ParameterizedTest
    @CsvSource({"60,18,1", "80,24,2", "200,60,5"})
    void aSourceThatFellSilentNeverLeavesAnOldNumberLookingLive(int width, int height, int digitScale) {
        Link silent =
                new Link.Changed(Sessions.seconds(3), Link.State.STALE, new LinkDetail.Told("no reading for 2.0 s"));
        Moment moment = moment(Seek.PEAK, reading(1, 0.870, 0.870, Trend.RISING), silent);
        Grid grid = page.draw(moment, Aside.NONE, width, height);
        assertTrue(text(moment, width, height).contains("NO NEW READINGS: no reading for 2.0 s"));
        assertTrue(BlockText.stands(grid, "----", digitScale), () -> String.join("\n", grid.lines()));
        assertFalse(BlockText.stands(grid, "0.870", digitScale));
    }

    @Test
    void readingsThatComeAgainTakeTheAlarmAwayAndStandThere() {
        Moment moment = moment(
                Seek.PEAK,
                new Link.Changed(
                        0, Link.State.STALE, new LinkDetail.Told("no reading yet, after 10 s: see that it runs")),
                new Link.Changed(0, Link.State.RESUMED, new LinkDetail.Told("after 14.0 s")),
                reading(1, 0.870, 0.870, Trend.RISING));
        Grid grid = page.draw(moment, Aside.NONE, 80, 24);
        assertFalse(text(moment, 80, 24).contains("NO NEW READINGS"));
        assertTrue(BlockText.stands(grid, "0.870", 2), () -> String.join("\n", grid.lines()));
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void beforeTheFirstReadingItSaysInFullWhatToDo(int width, int height) {
        String advice = "no reading yet, after 10 s: see that whatever writes here runs, and sends each line at once";
        String text = text(
                moment(Seek.PEAK, new Link.Changed(0, Link.State.STALE, new LinkDetail.Told(advice))), width, height);
        Stream.of(advice.split(" "))
                .forEach(word -> assertTrue(text.contains(word), () -> word + " is missing in\n" + text));
    }

    @ParameterizedTest
    @CsvSource({"40,12,0", "80,24,2", "200,60,5"})
    void overloadFillsWholeRowsAndSaysWhatToDo(int width, int height, int scale) {
        Moment moment = moment(
                Seek.PEAK,
                reading(1, 0.870, 0.870, Trend.RISING),
                new Overload(Sessions.seconds(2), Overload.Cause.OVER_RANGE, Double.NaN),
                Sessions.untrusted(2, Condition.OVER_RANGE, 0.870, 0.870));
        Grid grid = page.draw(moment, Aside.NONE, width, height);
        assertTrue(grid.line(1).contains("OVERLOAD, over-range: turn the"));
        long alertRows = Stream.iterate(0, row -> row < grid.height(), row -> row + 1)
                .filter(row -> grid.styleAt(row, 0) == Grid.Style.ALERT
                        && grid.styleAt(row, grid.width() - 1) == Grid.Style.ALERT)
                .count();
        assertTrue(alertRows >= 2, "the banner and the verdict");
        boolean small = grid.lines().stream().anyMatch(line -> line.strip().equals("OVER"));
        assertTrue(
                scale == 0 ? small : BlockText.stands(grid, "OVER", scale),
                "what to do is whole, and then as large as fits");
    }

    @Test
    void aLostInstrumentNeverLeavesAnOldNumberLookingLive() {
        Moment moment = moment(
                Seek.PEAK,
                reading(1, 0.870, 0.870, Trend.RISING),
                new Link.Changed(Sessions.seconds(3), Link.State.LOST, new LinkDetail.Told("/dev/ttyUSB0 has gone")));
        Grid grid = page.draw(moment, Aside.NONE, 80, 24);
        assertTrue(grid.line(1).contains("LINK LOST: /dev/ttyUSB0 has gone"));
        assertTrue(BlockText.stands(grid, "NO LINK", 1));
        assertTrue(BlockText.stands(grid, "----", 2));
        assertFalse(BlockText.stands(grid, "0.870", 2));
    }

    @ParameterizedTest
    @CsvSource({"80,24,1", "120,40,2", "200,60,3"})
    void aQuestionIsWrittenAcrossTheScreen(int width, int height, int scale) {
        Grid grid = page.draw(asked(CheckKind.LEVEL), Aside.NONE, width, height);
        assertTrue(BlockText.stands(grid, "GENERATOR", scale), () -> String.join("\n", grid.lines()));
        String text = String.join("\n", grid.lines());
        assertTrue(text.contains("halve the generator"), "and once more with small letters for its units");
        assertTrue(text.contains("q quit"));
    }

    @Test
    void ofALongSetUpTheGeneratorIsLargeAndTheRestIsWhole() {
        Setup setup = new Setup(
                OptionalDouble.of(455e3),
                "none",
                "",
                "",
                OptionalDouble.empty(),
                "1620, quiet, the gang all the way open and the volume all the way up",
                "",
                Optional.of(new LevelRange(0.5, 1.5, "V")),
                HighTension.POSSIBLE);
        Preparation knobs = new Preparation(Optional.of(setup), false, false, Optional.empty(), Optional.empty());
        Request asked = new Request.SetUp(Sessions.seconds(2), knobs);
        Grid grid = page.draw(moment(Seek.PEAK, reading(1, 0.870, 0.870, Trend.RISING), asked), Aside.NONE, 80, 24);
        assertTrue(
                BlockText.stands(grid, "GENERATOR", 1) && BlockText.stands(grid, "455 KHZ", 1),
                () -> String.join("\n", grid.lines()));
        String text = String.join("\n", grid.lines()).replaceAll("\\s+", " ");
        assertTrue(text.contains(WORDS.of(asked)), text);
    }

    @Test
    void whereAHandGoesIntoTheSetOffIsLargeAndTheRestIsWhole() {
        String move = WORDS.of(new Request.Asked(0, CheckKind.LOADING, 0));
        Grid grid = page.draw(asked(CheckKind.LOADING), Aside.NONE, 80, 24);
        assertTrue(
                BlockText.stands(grid, "SET", 2) && BlockText.stands(grid, "OFF", 2),
                () -> String.join("\n", grid.lines()));
        assertTrue(words(grid).contains(move), () -> words(grid));
    }

    @Test
    void inASmallWindowAQuestionIsWhole() {
        String move = WORDS.of(new Request.Asked(0, CheckKind.LOADING, 0));
        String text = words(page.draw(asked(CheckKind.LOADING), Aside.NONE, 40, 12));
        assertTrue(text.replace("?", "").replaceAll(" +", " ").contains(move), text);
        assertTrue(text.contains("q quit"), text);
    }

    private static String words(Grid grid) {
        return String.join("\n", grid.lines()).replaceAll("\\s+", " ");
    }

    private static Moment asked(CheckKind check) {
        return moment(
                Seek.PEAK, reading(1, 0.870, 0.870, Trend.RISING), new Request.Asked(Sessions.seconds(2), check, 0));
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "120,40"})
    void aLongNoteIsNeverCutOff(int width, int height) {
        String note = "two maxima: the proper one is usually with the slugs at the outer ends; stay ten seconds to keep"
                + " this one, or turn to the other";
        Moment moment =
                moment(Seek.PEAK, reading(1, 0.870, 0.870, Trend.RISING), new Guard.Choice(Sessions.seconds(2)));
        String text = text(moment, width, height).replaceAll("\\s+", " ");
        assertTrue(text.contains(note), text);
        assertTrue(text.contains("0.00 dB below best"), text);
    }

    @Test
    void theWayOutIsShownHoweverManyKeysThereAre() {
        Page full = new Page(Symbols.BLOCKS, KeyBindings.usual().hints(EnumSet.allOf(KeyAction.class)));
        for (int[] size : new int[][] {{40, 12}, {60, 18}, {80, 24}, {200, 60}}) {
            Grid grid = full.draw(past(), Aside.NONE, size[0], size[1]);
            String text = String.join("\n", grid.lines());
            assertTrue(text.contains("r next"), text);
            assertTrue(text.contains("q quit"), text);
        }
    }

    @Test
    void bothAlarmsAreSaidWhenBothHold() {
        Moment moment = moment(
                Seek.PEAK,
                new Overload(1, Overload.Cause.CLIPPING, Double.NaN),
                new Link.Changed(2, Link.State.STALE, new LinkDetail.Told("for 2 s")));
        String banner = page.draw(moment, Aside.NONE, 80, 24).line(1);
        assertTrue(banner.contains("NO NEW READINGS: for 2 s"));
        assertTrue(banner.contains("OVERLOAD, clipping: turn the"));
    }

    @Test
    void theMarkOfTheBestStandsStillWhileTheBarMoves() {
        int[] columns = Stream.of(0.1, 0.5, 0.8, 0.87)
                .mapToInt(value -> {
                    Moment moment = moment(Seek.PEAK, reading(1, value, 0.87, Trend.RISING));
                    Grid grid = page.draw(moment, Aside.NONE, 80, 24);
                    return barRow(grid).orElseThrow().indexOf(Symbols.BLOCKS.mark());
                })
                .distinct()
                .toArray();
        assertEquals(1, columns.length);
    }

    private static Optional<String> barRow(Grid grid) {
        return grid.lines().stream()
                .filter(line -> line.indexOf(Symbols.BLOCKS.mark()) >= 0)
                .findFirst();
    }

    @Test
    void theBarIsHatchedOncePastSoThatNoColourIsNeeded() {
        String approaching = barRow(
                        page.draw(moment(Seek.PEAK, reading(1, 0.6, 0.87, Trend.RISING)), Aside.NONE, 80, 24))
                .orElseThrow();
        String returning = barRow(page.draw(past(), Aside.NONE, 80, 24)).orElseThrow();
        assertTrue(approaching.indexOf(Symbols.BLOCKS.hatched()) < 0);
        assertTrue(returning.indexOf(Symbols.BLOCKS.hatched()) >= 0);
        assertTrue(returning.indexOf(Symbols.BLOCKS.full()) < 0);
    }

    @Test
    void aDipIsNearerWhenTheReadingFalls() {
        String text = text(moment(Seek.DIP, reading(1, 0.020, 0.010, Trend.FALLING)), 80, 24);
        assertTrue(text.contains("falling: closer"));
        assertTrue(text.contains("6.02 dB above least 10.00 mV"));
        assertTrue(text.contains("LEAST"));
    }

    @Test
    void aZeroDeflectsToTheSideOfItsSign() {
        Moment positive = moment(
                Seek.ZERO, Sessions.zeroReading(1, 0.4, Trend.RISING), Sessions.zeroReading(2, 0.1, Trend.FALLING));
        Moment negative = moment(
                Seek.ZERO, Sessions.zeroReading(1, 0.4, Trend.RISING), Sessions.zeroReading(2, -0.1, Trend.RISING));
        String right = barRow(page.draw(positive, Aside.NONE, 80, 24)).orElseThrow();
        String left = barRow(page.draw(negative, Aside.NONE, 80, 24)).orElseThrow();
        assertTrue(right.lastIndexOf(Symbols.BLOCKS.full()) > right.indexOf(Symbols.BLOCKS.mark()));
        assertTrue(left.indexOf(Symbols.BLOCKS.full()) < left.indexOf(Symbols.BLOCKS.mark()));
        assertEquals(right.indexOf(Symbols.BLOCKS.mark()), left.indexOf(Symbols.BLOCKS.mark()));
        assertTrue(text(negative, 80, 24).contains("largest swing 0.400 V"));
    }

    @Test
    void withoutBlockCharactersThePageIsPlainAscii() {
        Page ascii = new Page(Symbols.ASCII, KEYS);
        for (int[] size : new int[][] {{40, 12}, {80, 24}, {200, 60}}) {
            String text = String.join(
                    "\n",
                    ascii.draw(past(), Aside.NONE.withStatus("sound 5"), size[0], size[1])
                            .lines());
            assertTrue(text.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 127)), text);
            assertTrue(text.contains("past it: back, 0.6 dB"));
        }
    }

    @Test
    void noWindowIsTooSmallOrTooLargeToBeDrawn() {
        SplittableRandom random = new SplittableRandom(4);
        Moment moment = past();
        for (int i = 0; i < 500; i++) {
            int width = random.nextInt(0, 260);
            int height = random.nextInt(0, 90);
            Grid grid = page.draw(moment, Aside.NONE.withStatus("sound 5"), width, height);
            assertEquals(Math.max(1, width), grid.width());
            assertEquals(Math.max(1, height), grid.height());
        }
    }

    @Test
    void beforeTheFirstReadingThePageSaysThatItWaits() {
        String text = text(new MomentKeeper().moment(), 80, 24);
        assertTrue(text.contains("waiting for the first reading"));
        assertTrue(text.contains("no best yet"));
    }

    private static Caution hum() {
        return new Caution.Suspected(Sessions.seconds(1), Suspicion.HUM, 0.1);
    }

    private static Page pageWithRepaired() {
        return new Page(Symbols.BLOCKS, KeyBindings.usual().hints(EnumSet.of(KeyAction.REPAIRED, KeyAction.QUIT)));
    }

    private static String flat(Page page, Moment moment, int width, int height) {
        return String.join(" ", page.draw(moment, Aside.NONE, width, height).lines())
                .replaceAll(" +", " ");
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "40, 12"})
    void aSuspicionStandsWithTheKeyThatAnswersItWhateverIsSaidAfterIt(int width, int height) {
        Moment later = moment(
                Seek.PEAK,
                hum(),
                new Said.Note(Sessions.seconds(2), "something else"),
                new Passed(Sessions.seconds(3), 0.870, Sessions.seconds(1), 0.3),
                reading(60, 0.812, 0.870, Trend.FALLING));
        String shown = flat(pageWithRepaired(), later, width, height);
        assertTrue(shown.contains(WORDS.of(hum()) + " (f repaired)"), shown);
        assertTrue(shown.contains("below best"), shown);
    }

    @ParameterizedTest
    @EnumSource(Suspicion.class)
    void everySuspicionIsWholeInASmallWindow(Suspicion suspicion) {
        Caution raised = new Caution.Suspected(Sessions.seconds(2), suspicion, Double.NaN);
        Moment doubtful = moment(Seek.PEAK, reading(1, 0.870, 0.870, Trend.RISING), raised);
        String shown = flat(pageWithRepaired(), doubtful, 40, 12);
        assertTrue(shown.contains(WORDS.of(raised) + " (f repaired)"), shown);
    }

    @Test
    void aSuspicionGoesWhenTheUserHasLookedAfterItOrACheckHasProvedItWrong() {
        Said repaired = new Said.Command(Sessions.seconds(2), new Instruction.Level(LevelCommand.repaired()));
        assertTrue(moment(Seek.PEAK, hum(), repaired).warning().isEmpty());
        Caution cleared = new Caution.NoLongerSuspected(Sessions.seconds(2), Suspicion.HUM);
        assertTrue(moment(Seek.PEAK, hum(), cleared).warning().isEmpty());
        Adjuster next = new Adjuster(Sessions.seconds(2), "T1 top", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN);
        assertTrue(moment(Seek.PEAK, hum(), next).warning().isPresent());
    }

    @Test
    void aPeakThatIsTooWideIsOfNoInterestForTheNextAdjusterOrAfterTheLevelCheck() {
        Caution wide = new Caution.WidePeak(Sessions.seconds(1), 2);
        assertTrue(moment(Seek.PEAK, wide).warning().isPresent());
        Adjuster next = new Adjuster(Sessions.seconds(2), "T1 top", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN);
        assertTrue(moment(Seek.PEAK, wide, next).warning().isEmpty());
        Caution checked = new Caution.Checked(Sessions.seconds(2), CheckKind.LEVEL, CheckFigures.of(1));
        assertTrue(moment(Seek.PEAK, wide, checked).warning().isEmpty());
    }
}
