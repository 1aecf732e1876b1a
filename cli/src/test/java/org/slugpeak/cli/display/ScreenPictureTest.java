package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.house.KeptPicture;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.run.PlayedDemo;
import org.slugpeak.cli.run.ShowingOutput;
import org.slugpeak.core.session.SessionRecord;

/** The pictures of the screen in the documents are the page that the tool draws in the demo. */
class ScreenPictureTest {

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    /** Far enough past a peak for it to be seen on the bar. */
    private static final double PAST_IT_DB = 0.4;

    @Test
    void pastThePeak() throws Exception {
        KeptPicture.assertIs("past-the-peak.svg", picture(Act.BACK, PAST_IT_DB, "slugpeak demo: past the peak"));
    }

    @Test
    void onThePeak() throws Exception {
        KeptPicture.assertIs("held.svg", picture(Act.HELD, 0, "slugpeak demo: held"));
    }

    private static String picture(Act act, double dropDb, String title) throws Exception {
        Page page = new Page(Symbols.BLOCKS, KeyBindings.usual().hints(ShowingOutput.USUAL_KEYS));
        MomentKeeper keeper = new MomentKeeper();
        for (SessionRecord record : PlayedDemo.records()) {
            keeper.take(record);
            if (keeper.moment().act() == act && keeper.moment().level().distanceDb() >= dropDb) {
                return GridPicture.of(page.draw(keeper.moment(), Aside.NONE, COLUMNS, ROWS), title);
            }
        }
        throw new AssertionError("the demo never comes to " + act);
    }

    @Test
    void aBlockIsABoxAndWordsAreWords() {
        Grid grid = new Grid(8, 1);
        grid.write(0, 0, "a<b", Grid.Style.PLAIN);
        grid.write(0, 4, "\u2588\u2588", Grid.Style.TURN_ROUND);
        String drawn = GridPicture.of(grid, "t");
        assertTrue(drawn.contains(">a&lt;b</text>"), drawn);
        // 226 of the 256 colours is yellow, 16 is black.
        assertEquals(List.of("#101010", "#ffff00", "#000000"), fills(drawn));
    }

    private static List<String> fills(String drawn) {
        return drawn.lines()
                .filter(line -> line.startsWith("<rect"))
                .map(line -> line.replaceFirst(".*fill=\"([^\"]*)\".*", "$1"))
                .toList();
    }
}
