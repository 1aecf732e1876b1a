package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.run.ShowingOutput;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** A response curve, told by the one state of the moment like everything else: word, sign, panel, line, call and plain lines. */
class CurvePageTest {

    private static final List<KeyHint> KEYS = KeyBindings.usual().hints(keys());

    private static Set<KeyAction> keys() {
        Set<KeyAction> keys = EnumSet.copyOf(ShowingOutput.USUAL_KEYS);
        keys.addAll(ShowingOutput.CURVE_KEYS);
        return keys;
    }

    private static Moment moment(SessionRecord... records) {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        Stream.of(records).forEach(keeper::take);
        return keeper.moment();
    }

    private static SessionRecord setting(int number, boolean byHand) {
        return new Request.SetGenerator(seconds(1), 439e3 + number * 1e3, number, 31, byHand, Optional.empty());
    }

    private static SessionRecord reads(double value) {
        return Sessions.reading(2, value, value, Trend.RISING).uncompared();
    }

    private static Grid draw(Symbols symbols, Moment moment, int width, int height) {
        return new Page(symbols, KEYS).draw(moment, Aside.NONE, width, height);
    }

    private static Grid draw(Moment moment, int width, int height) {
        return draw(Symbols.BLOCKS, moment, width, height);
    }

    private static String text(Grid grid) {
        return String.join("\n", grid.lines());
    }

    @ParameterizedTest
    @CsvSource({"40,12,1", "80,24,2", "132,43,3", "200,60,3"})
    void theFrequencyStandsInDigitsThatGrowWithTheWindowAndTheReadingBelow(int width, int height, int scale) {
        Grid grid = draw(moment(setting(2, true), reads(0.523)), width, height);
        assertTrue(BlockText.stands(grid, "441", scale), () -> text(grid));
        assertTrue(BlockText.stands(grid, "0.523", 1) || text(grid).contains("0.523 V"), () -> text(grid));
    }

    @ParameterizedTest
    @CsvSource({"80,24", "200,60"})
    void aWindowWithRoomSaysWhatToDoWhichPointItIsAndWhichKeysHelp(int width, int height) {
        Moment moment = moment(new CurveWork.PointTaken(0, 440e3, 0.487), setting(2, true), reads(0.523));
        Grid grid = draw(moment, width, height);
        String words = text(grid).replaceAll("\\s+", " ");
        Stream.of(
                        "2 of 31",
                        "set 441.00 kHz, and let it stand",
                        "440.00 kHz reads 0.487 V",
                        "enter next",
                        "p previous",
                        "q quit")
                .forEach(part -> assertTrue(words.contains(part), () -> part + " is missing in\n" + text(grid)));
    }

    @Test
    void thePointAtHandIsAskedForInThePanelOfARequest() {
        Moment moment = moment(setting(2, true), reads(0.523));
        assertEquals(Act.DO, moment.act());
        Grid grid = draw(moment, 80, 24);
        assertEquals(Grid.Style.ASK, grid.styleAt(4, 0));
        assertEquals('?', grid.at(4, 0));
    }

    @Test
    void aGeneratorThatIsSetFromHereAsksNothingOfAPerson() {
        Moment moment = moment(setting(2, false), reads(0.523));
        assertEquals(Act.WAIT, moment.act());
        assertEquals(Optional.empty(), Obvious.next(moment));
        assertTrue(text(draw(moment, 80, 24)).contains("441.00 kHz is set: nothing to do"));
    }

    @Test
    void theObviousNextThingAtAPointIsToTakeIt() {
        assertEquals(Optional.of(KeyAction.NEXT), Obvious.next(moment(setting(2, true))));
    }

    @Test
    void eachPointThatIsTakenCallsOnceAndTheFirstIsARequest() {
        assertEquals(Optional.of(Call.LOOK), moment(setting(1, true)).called().map(Called::call));
        assertEquals(Optional.empty(), moment(setting(1, false)).called());
        Called second = moment(setting(1, true), new CurveWork.PointTaken(0, 440e3, 0.4), setting(2, true))
                .called()
                .orElseThrow();
        assertEquals(Call.BEGIN, second.call());
        assertEquals(2, second.number());
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void whatIsAskedBeforeTheCurveIsLarge(int width, int height) {
        Grid grid = draw(moment(reads(0.523), new Request.Asked(0, CheckKind.REST, 0)), width, height);
        boolean large = Stream.of(1, 2, 3)
                .anyMatch(scale -> BlockText.stands(grid, "TURN", scale) || BlockText.stands(grid, "GEN", scale));
        assertTrue(large, () -> text(grid));
    }

    /** Neither the best nor a way to it means anything where nothing is turned. */
    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void nothingIsSaidOfABestOrOfAWayToIt(int width, int height) {
        Moment moment = moment(setting(2, true), reads(0.5), reads(0.6), reads(0.4));
        assertEquals("", MomentWords.trend(moment));
        String text = text(draw(moment, width, height));
        assertFalse(text.contains("closer") || text.contains("further") || text.contains("best"), text);
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void aLostMeterLeavesNoOldNumberAndFillsItsRow(int width, int height) {
        Link.Changed lost = new Link.Changed(seconds(3), Link.State.LOST, new LinkDetail.Told("plug it in again"));
        Moment moment = moment(setting(2, true), reads(0.523), lost);
        assertEquals(Act.NO_LINK, moment.act());
        Grid grid = draw(moment, width, height);
        assertTrue(grid.line(1).contains("LINK LOST: plug it in again"), () -> text(grid));
        assertEquals(Grid.Style.ALERT, grid.styleAt(1, width - 1));
        assertFalse(BlockText.stands(grid, "0.523", 1) || text(grid).contains("0.523"), () -> text(grid));
        Moment back = moment(setting(2, true), lost, new Link.Changed(seconds(4), Link.State.RESUMED, LinkDetail.NONE));
        assertEquals("441 kHz", MomentWords.word(back));
    }

    /** Each alarm has its own end: a meter that is back says nothing of an overload. */
    @Test
    void anOverloadStandsUntilItIsOverWhateverTheMeterDoes() {
        Moment moment = moment(
                setting(2, true),
                new Overload(seconds(3), Overload.Cause.CLIPPING, Double.NaN),
                new Link.Changed(seconds(4), Link.State.LOST, LinkDetail.NONE),
                new Link.Changed(seconds(5), Link.State.RESUMED, LinkDetail.NONE));
        assertEquals(Act.OVERLOAD, moment.act());
    }

    @Test
    void aGeneratorThatHasGoneIsAskedForUntilItStandsAgain() {
        SessionRecord gone = new Request.GeneratorFails(seconds(3), true, "it has gone: plug it in again");
        assertEquals("GEN FAILS", MomentWords.word(moment(setting(2, false), gone)));
        Moment back = moment(setting(2, false), gone, new Request.GeneratorStands(seconds(9), 441e3, 1e-4));
        assertEquals(Act.WAIT, back.act());
    }

    @Test
    void plainLinesSayEachPointOnceAndNothingBetween() {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PlainLines lines = new PlainLines(new PrintStream(said, true, StandardCharsets.UTF_8));
        lines.take(setting(1, true));
        for (int i = 0; i < 40; i++) {
            lines.take(Sessions.reading(i, 0.1 * i, 0.1 * i, Trend.RISING).uncompared());
        }
        lines.take(new CurveWork.PointTaken(seconds(40), 440e3, 0.487));
        lines.take(setting(2, true));
        assertEquals(
                List.of(
                        "generator to 440.00 kHz (1 of 31)",
                        "440.00 kHz reads 0.487",
                        "generator to 441.00 kHz (2 of 31)"),
                said.toString(StandardCharsets.UTF_8).lines().toList());
    }

    @Test
    void withoutBlockCharactersNothingButAsciiIsDrawn() {
        String text = text(draw(Symbols.ASCII, moment(setting(2, true), reads(0.523)), 80, 24));
        assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(text), text);
    }

    @Test
    void aWindowOfAnySizeIsDrawn() {
        for (int width = 1; width < 100; width += 7) {
            for (int height = 1; height < 40; height += 3) {
                assertEquals(
                        height,
                        draw(moment(setting(2, true), reads(-0.5)), width, height)
                                .lines()
                                .size());
            }
        }
    }
}
