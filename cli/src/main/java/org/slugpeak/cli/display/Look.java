package org.slugpeak.cli.display;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;

/**
 * How the styles look on a given terminal. Whatever has a colour has a ground of its own under black or white letters, so that the terminal's
 * own colours do not matter; everything that a colour says is also said by a word, a sign and what the edges of a panel are made of.
 * Immutable; any thread may use it.
 */
final class Look {

    /** The black of the standard colour cube, which no colour scheme changes. */
    static final int BLACK = 16;

    /** Its white. */
    static final int WHITE = 231;

    /** Letters and ground of what has a colour, of the 256 standard colours. */
    static final Map<Grid.Style, Inks> COLOURS = Map.of(
            Grid.Style.TURN_ROUND, new Inks(BLACK, 226),
            Grid.Style.REST, new Inks(WHITE, 18),
            Grid.Style.DONE, new Inks(BLACK, 120),
            Grid.Style.ASK, new Inks(WHITE, 54),
            Grid.Style.ALERT, new Inks(BLACK, 208),
            Grid.Style.FLASH, new Inks(BLACK, WHITE),
            Grid.Style.CODE, new Inks(WHITE, BLACK));

    /**
     * Two of the 256 standard colours.
     *
     * @param letters in front
     * @param ground behind
     */
    record Inks(int letters, int ground) {}

    private static final int COLOURS_NEEDED = 256;

    private final Map<Grid.Style, AttributedStyle> styles = new EnumMap<>(Grid.Style.class);
    private final Symbols symbols;

    private Look(boolean colour, Symbols symbols) {
        this.symbols = symbols;
        AttributedStyle bold = AttributedStyle.DEFAULT.bold();
        styles.put(Grid.Style.PLAIN, AttributedStyle.DEFAULT);
        styles.put(Grid.Style.STRONG, bold);
        styles.put(Grid.Style.READING, bold);
        COLOURS.forEach((style, inks) -> styles.put(
                style,
                colour
                        ? AttributedStyle.DEFAULT.foreground(inks.letters()).background(inks.ground())
                        : bold.inverse()));
        if (!colour) {
            styles.put(Grid.Style.FLASH, bold);
            styles.put(Grid.Style.CODE, AttributedStyle.DEFAULT);
        }
    }

    static Look of(Terminal terminal, Map<String, String> environment, boolean ascii) {
        Integer colours = terminal.getNumericCapability(Capability.max_colors);
        boolean colour = colours != null
                && colours >= COLOURS_NEEDED
                && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return of(colour, ascii ? StandardCharsets.US_ASCII : terminal.outputEncoding());
    }

    static Look of(boolean colour, Charset encoding) {
        boolean blocks = encoding.name().toUpperCase(Locale.ROOT).startsWith("UTF");
        return new Look(colour, blocks ? Symbols.BLOCKS : Symbols.ASCII);
    }

    AttributedStyle style(Grid.Style style) {
        return styles.getOrDefault(style, AttributedStyle.DEFAULT);
    }

    Symbols symbols() {
        return symbols;
    }
}
