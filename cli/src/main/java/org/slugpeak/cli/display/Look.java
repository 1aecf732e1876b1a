package org.slugpeak.cli.display;

import java.nio.charset.Charset;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;

/**
 * How the four styles look on a given terminal. Colours are blue and orange, which the common forms of colour blindness keep
 * apart, and everything that a colour says is also said by words or by bold and inverse cells. Immutable; any thread may use
 * it.
 */
final class Look {

    /** Of the 256 standard colours; it keeps 4.5:1 against a black and a white background alike. */
    static final int BLUE = 63;

    /** Only ever a background, under black letters. */
    static final int ORANGE = 208;

    /** The black of the standard colour cube, which no colour scheme changes. */
    static final int BLACK = 16;

    private static final int COLOURS_NEEDED = 256;

    private final Map<Grid.Style, AttributedStyle> styles = new EnumMap<>(Grid.Style.class);
    private final Symbols symbols;

    private Look(boolean colour, Symbols symbols) {
        this.symbols = symbols;
        AttributedStyle bold = AttributedStyle.DEFAULT.bold();
        styles.put(Grid.Style.PLAIN, AttributedStyle.DEFAULT);
        styles.put(Grid.Style.STRONG, bold);
        styles.put(Grid.Style.READING, colour ? bold.foreground(BLUE) : bold);
        styles.put(
                Grid.Style.ALERT,
                colour ? AttributedStyle.DEFAULT.foreground(BLACK).background(ORANGE) : bold.inverse());
    }

    static Look of(Terminal terminal, Map<String, String> environment) {
        Integer colours = terminal.getNumericCapability(Capability.max_colors);
        boolean colour = colours != null
                && colours >= COLOURS_NEEDED
                && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return of(colour, terminal.outputEncoding());
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
