package org.slugpeak.cli.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.report.Html;
import org.slugpeak.cli.words.PagePhrase;

/** Puts the words of today's language, and the buttons, into the page. Stateless. */
final class PageWords {

    /** Everything that the page itself says; what it is sent says the rest. */
    static final List<PagePhrase> ON_PAGE = List.of(
            PagePhrase.LANGUAGE,
            PagePhrase.TITLE,
            PagePhrase.WITHOUT_SCRIPTS,
            PagePhrase.CONNECTING,
            PagePhrase.LOST,
            PagePhrase.LOST_MORE,
            PagePhrase.OVER,
            PagePhrase.SOUND,
            PagePhrase.VIBRATION,
            PagePhrase.NO_VIBRATION,
            PagePhrase.STAYS_AWAKE,
            PagePhrase.MAY_SLEEP,
            PagePhrase.LAST_MINUTE,
            PagePhrase.CURVE,
            PagePhrase.ADJUSTER,
            PagePhrase.GAIN,
            PagePhrase.REFUSED);

    /** The wishes that may be sent from the page, with what stands on their buttons. */
    private static final Map<KeyAction, PagePhrase> BUTTONS = Map.ofEntries(
            Map.entry(KeyAction.NEXT, PagePhrase.NEXT),
            Map.entry(KeyAction.MARK, PagePhrase.MARK),
            Map.entry(KeyAction.DONE, PagePhrase.DONE),
            Map.entry(KeyAction.AGAIN, PagePhrase.AGAIN),
            Map.entry(KeyAction.PREVIOUS, PagePhrase.PREVIOUS),
            Map.entry(KeyAction.SKIP, PagePhrase.SKIP),
            Map.entry(KeyAction.REST, PagePhrase.REST),
            Map.entry(KeyAction.LEVEL, PagePhrase.LEVEL),
            Map.entry(KeyAction.CUT, PagePhrase.CUT),
            Map.entry(KeyAction.CHECK, PagePhrase.CHECK),
            Map.entry(KeyAction.DROP, PagePhrase.DROP),
            Map.entry(KeyAction.REPAIRED, PagePhrase.REPAIRED));

    private PageWords() {}

    /** The page with its gaps filled; no words can become markup. */
    static String fill(String page, Set<KeyAction> actions) {
        String filled = page.replace("{{BUTTONS}}", buttons(actions));
        for (PagePhrase phrase : ON_PAGE) {
            filled = filled.replace("{{" + phrase.name() + "}}", Html.escape(phrase.of()));
        }
        return filled;
    }

    private static String buttons(Set<KeyAction> actions) {
        StringBuilder buttons = new StringBuilder();
        for (KeyAction action : KeyAction.values()) {
            if (actions.contains(action) && BUTTONS.containsKey(action)) {
                buttons.append(String.format(
                        Locale.ROOT,
                        "<button type=\"button\" data-key=\"%s\">%s</button>%n",
                        action.word(),
                        Html.escape(BUTTONS.get(action).of())));
            }
        }
        return buttons.toString();
    }

    /** The wish that a button sends; empty for what no button sends. */
    static Optional<KeyAction> wish(String word) {
        return BUTTONS.keySet().stream()
                .filter(action -> action.word().equals(word))
                .findFirst();
    }
}
