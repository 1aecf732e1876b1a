package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.moment.CurveMoment;
import org.slugpeak.cli.moment.CurveMomentKeeper;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

class CurvePageTest {

    private static final List<KeyHint> KEYS = KeyBindings.usual()
            .hints(EnumSet.of(KeyAction.NEXT, KeyAction.DONE, KeyAction.PREVIOUS, KeyAction.SKIP, KeyAction.QUIT));

    private final CurvePage page = new CurvePage(Symbols.BLOCKS, KEYS);

    private static CurveMoment moment(SessionRecord... records) {
        CurveMomentKeeper keeper = new CurveMomentKeeper(true);
        keeper.take(Sessions.start(Seek.PEAK));
        Stream.of(records).forEach(keeper::take);
        return keeper.moment();
    }

    private static SessionRecord setting() {
        return new Request.SetGenerator(0, 441e3, 2, 31);
    }

    private Grid draw(CurveMoment moment, int width, int height) {
        return page.draw(moment, Aside.NONE, width, height);
    }

    private static String text(Grid grid) {
        return String.join("\n", grid.lines());
    }

    @ParameterizedTest
    @CsvSource({"40,12,1", "80,24,2", "200,60,5"})
    void frequencyAndReadingStandInDigitsThatGrowWithTheWindow(int width, int height, int scale) {
        Grid grid = draw(moment(setting(), reading(1, 0.523, 0.523, Trend.STEADY)), width, height);
        assertTrue(BlockText.stands(grid, "441.00", scale), () -> text(grid));
        assertTrue(BlockText.stands(grid, "0.523", scale), () -> text(grid));
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void everySizeSaysWhatToDoWhichPointItIsAndWhichKeysHelp(int width, int height) {
        Grid grid = draw(
                moment(new CurveWork.PointTaken(0, 440e3, 0.487), setting(), reading(1, 0.523, 0.523, Trend.STEADY)),
                width,
                height);
        String words = text(grid).replaceAll("\\s+", " ");
        Stream.of(
                        "2 of 31",
                        "set 441.00 kHz, and let it stand",
                        "taken: 440.00 kHz 0.487",
                        "r next",
                        "p previous",
                        "q quit")
                .forEach(part -> assertTrue(words.contains(part), () -> part + " is missing in\n" + text(grid)));
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void whatIsAskedBeforeTheCurveTakesTheRoomOfTheFigures(int width, int height) {
        Grid grid = draw(
                moment(reading(1, 0.523, 0.523, Trend.STEADY), new Request.Asked(0, CheckKind.REST, 0)), width, height);
        boolean large = BlockText.stands(grid, "TURN", 1)
                || BlockText.stands(grid, "TURN", 2)
                || BlockText.stands(grid, "TURN", 3);
        assertTrue(large || text(grid).contains("turn the generator off"), () -> text(grid));
        assertTrue(text(grid).contains("reading 0.523"), () -> text(grid));
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "200,60"})
    void aLostMeterLeavesNoOldNumberAndFillsItsRow(int width, int height) {
        CurveMoment lost = moment(
                setting(),
                reading(1, 0.523, 0.523, Trend.STEADY),
                new Link.Changed(0, Link.State.LOST, new LinkDetail.Told("plug it in again")));
        Grid grid = draw(lost, width, height);
        assertTrue(grid.line(1).contains("meter lost: plug it in again"));
        assertEquals(Grid.Style.ALERT, grid.styleAt(1, width - 1));
        assertFalse(BlockText.stands(grid, "0.523", 1) || text(grid).contains("0.523"), () -> text(grid));
        assertTrue(moment(
                        new Link.Changed(0, Link.State.LOST, LinkDetail.NONE),
                        new Link.Changed(0, Link.State.RESUMED, LinkDetail.NONE))
                .alarm()
                .isEmpty());
    }

    @Test
    void aGeneratorThatIsSteppedForTheUserAsksNothingOfHim() {
        CurveMomentKeeper keeper = new CurveMomentKeeper(false);
        keeper.take(setting());
        assertTrue(text(draw(keeper.moment(), 80, 24)).contains("441.00 kHz is set: nothing to do"));
    }

    @Test
    void aWindowOfAnySizeIsDrawn() {
        for (int width = 1; width < 100; width += 7) {
            for (int height = 1; height < 40; height += 3) {
                Grid grid = draw(moment(setting(), reading(1, -0.5, -0.5, Trend.STEADY)), width, height);
                assertEquals(height, grid.lines().size());
            }
        }
    }
}
