package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Request;

/** What is shown of keys, below the session and instead of it, and the code that leads a telephone to the page. */
class OverlayTest {

    private static final String URL = "http://192.168.177.120:8455/33ZWuqsMCcZKXA_OJVPP7Q/";

    /** As large as the code of such an address is. */
    private static final PageAddress ADDRESS = new PageAddress(
            URL, Collections.nCopies(21, "\u2588".repeat(41)), Collections.nCopies(41, "##".repeat(41)));

    private static final KeysPage KEYS = new KeysPage(KeyBindings.usual().hints(EnumSet.allOf(KeyAction.class)));

    private static Grid draw(Overlay cover, Symbols symbols, int width, int height) {
        Grid grid = new Grid(width, height);
        cover.draw(grid, symbols);
        return grid;
    }

    private static String text(Grid grid) {
        return String.join("\n", grid.lines());
    }

    @Test
    void theCodeIsWholeOnAnOrdinaryWindowWithItsAddressBelow() {
        Grid grid = draw(ADDRESS, Symbols.BLOCKS, 80, 24);
        long rows = grid.lines().stream()
                .filter(line -> line.contains(ADDRESS.halves().get(0)))
                .count();
        assertEquals(ADDRESS.halves().size(), rows);
        assertTrue(text(grid).contains(URL));
        assertEquals(Grid.Style.CODE, grid.styleAt(0, 40));
    }

    @ParameterizedTest
    @CsvSource({"40,12,true,'41 by 23'", "80,24,false,'82 by 42'"})
    void whereItHasNoRoomTheAddressStandsWithTheSizeThatItNeeds(int width, int height, boolean blocks, String needed) {
        String text = text(draw(ADDRESS, blocks ? Symbols.BLOCKS : Symbols.ASCII, width, height));
        String joined = text.replaceAll("\\s+", "");
        assertTrue(joined.contains(URL), text);
        assertTrue(text.replaceAll("\\s+", " ").contains(needed), text);
    }

    @ParameterizedTest
    @CsvSource({"40,12", "80,24", "132,43"})
    void everyActionStandsOnTheKeysPageWithItsKey(int width, int height) {
        String text = text(draw(KEYS, Symbols.BLOCKS, width, height)).replaceAll("\\s+", " ") + " ";
        Arrays.stream(KeyAction.values()).filter(KeyAction::isBindable).forEach(action -> {
            String key = action.usualKeys().split(",", -1)[0];
            boolean there = text.contains(" " + key + " ") && (text.contains(action.word()) || width > 40);
            assertTrue(there, action + " is missing in " + text);
        });
    }

    @Test
    void whereThereIsRoomEveryKeyOfAnActionIsTold() {
        String text = text(draw(KEYS, Symbols.BLOCKS, 132, 43));
        assertTrue(text.contains("enter f13 ") && text.contains("r n pagedown "), text);
    }

    @Test
    void askedAgainTheSameGoesAndAnotherTakesItsPlace() {
        Aside keys = Aside.NONE.toggled(KEYS);
        assertEquals(Optional.of(KEYS), keys.cover());
        assertEquals(Optional.empty(), keys.toggled(KEYS).cover());
        assertEquals(Optional.of(ADDRESS), keys.toggled(ADDRESS).cover());
        assertEquals(List.of(), Aside.NONE.cover().stream().toList());
    }

    /** Whoever is asked for something that is done for him has no key to say that it is done. */
    @Test
    void theObviousKeyIsShownOnlyWhereItIsOfUse() {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(new Request.Asked(0, CheckKind.LEVEL, 0));
        Moment asked = keeper.moment();
        List<KeyHint> go = KeyBindings.usual().hints(EnumSet.of(KeyAction.GO, KeyAction.QUIT));
        assertEquals(List.of("q quit"), Foot.phrases(go, asked));
        List<KeyHint> done = KeyBindings.usual().hints(EnumSet.of(KeyAction.GO, KeyAction.DONE, KeyAction.QUIT));
        assertTrue(Foot.phrases(done, asked).contains("enter done"));
    }
}
