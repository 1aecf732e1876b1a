package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.cue.ScoreSheet;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.core.peak.Trend;

/** What the files of the page hold, and what they must not. */
class PageFilesTest {

    private static final Pattern ELSEWHERE = Pattern.compile("https?:|//[a-z0-9.-]+\\.[a-z]{2,}|@import|url\\(");
    /** No address that anybody fetches. */
    private static final String NAME_OF_SVG = "http://www.w3.org/2000/svg";

    private static final Pattern INLINE =
            Pattern.compile("<script(?![^>]*\\bsrc=)|<style|\\bstyle=|\\son[a-z]+=|javascript:");
    private static final Pattern MARKUP =
            Pattern.compile("innerHTML|outerHTML|insertAdjacentHTML|document\\.write|\\beval\\(|new Function");

    private static final PageFiles FILES = new PageFiles(Set.of(KeyAction.values()));

    private static String text(String name) {
        return FILES.find(name).orElseThrow().content();
    }

    private static String page() {
        return FILES.page().content();
    }

    @Test
    void everyGapOfThePageIsFilled() {
        assertFalse(page().contains("{{"), page());
    }

    @ParameterizedTest
    @ValueSource(strings = {"page.css", "page.js", "plot.js", "sound.js", "icon.svg"})
    void nothingComesFromElsewhereAndNothingBecomesMarkup(String name) {
        assertFalse(ELSEWHERE.matcher(text(name).replace(NAME_OF_SVG, "")).find(), name);
        assertFalse(MARKUP.matcher(text(name)).find(), name);
    }

    @Test
    void nothingRunsWithinThePage() {
        assertFalse(INLINE.matcher(page()).find());
        assertFalse(ELSEWHERE.matcher(page()).find());
    }

    @ParameterizedTest
    @EnumSource(Act.class)
    void everyActHasASign(Act act) {
        assertTrue(page().contains("<symbol id=\"" + act + "\""), act.name());
    }

    @Test
    void everyTrendHasASign() {
        Arrays.stream(Trend.values())
                .forEach(trend -> assertTrue(page().contains("<symbol id=\"" + trend.code() + "\""), trend.code()));
    }

    @ParameterizedTest
    @EnumSource(Call.class)
    void everyCallHasARhythmOfItsOwn(Call call) {
        assertTrue(text("page.js").contains("  " + call + ": ["), call.name());
    }

    @Test
    void everyTimbreThatIsPlayedIsKnown() {
        ScoreSheet.events().values().stream()
                .flatMap(notes -> notes.stream())
                .forEach(note -> assertTrue(text("sound.js").contains("  " + note.timbre() + ": [["), note.timbre()));
    }

    @Test
    void noButtonTurnsOrQuits() {
        assertEquals(12, page().split("<button", -1).length - 1);
        assertFalse(page().contains("data-key=\"quit\""));
        assertFalse(page().contains("data-key=\"turn"));
    }
}
