package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast by the formula of the Web Content Accessibility Guidelines (W3C, WCAG 2.2, "relative luminance" and "contrast
 * ratio"); at least 7:1 by success criterion 1.4.6. Colours are those of the 6 x 6 x 6 cube of 256-colour terminals.
 */
class ColoursTest {

    private static final double ENOUGH = 7;
    private static final int[] CUBE_LEVELS = {0, 95, 135, 175, 215, 255};

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double luminance(int red, int green, int blue) {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double luminance(int cubeColour) {
        int index = cubeColour - 16;
        return luminance(CUBE_LEVELS[index / 36], CUBE_LEVELS[index / 6 % 6], CUBE_LEVELS[index % 6]);
    }

    private static double contrast(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    @Test
    void theFormulaGivesTheRatioOfBlackAndWhite() {
        assertEquals(21.0, contrast(luminance(0, 0, 0), luminance(255, 255, 255)), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(Grid.Style.class)
    void whateverTheColoursOfTheTerminalLettersReadOnTheirGround(Grid.Style style) {
        Look.Inks inks = Look.COLOURS.get(style);
        if (inks == null) {
            String sent = new AttributedString(
                            "x", Look.of(true, StandardCharsets.UTF_8).style(style))
                    .toAnsi();
            assertFalse(sent.contains("8;5;"), "the terminal's own two colours, which are its user's choice: " + sent);
        } else {
            double contrast = contrast(luminance(inks.letters()), luminance(inks.ground()));
            assertTrue(contrast >= ENOUGH, style + ": " + contrast);
        }
    }

    /**
     * The codes that are really sent, on a white and on a black window. Assumed is xterm's palette (256colres.pl of its source, from memory), of which
     * only the cube may be used: schemes of colours change the first 16.
     */
    @ParameterizedTest(name = "letters {0} on a ground of {1}")
    @CsvSource({"0, 255", "255, 0"})
    void whatIsSentReadsOnAWhiteAndOnABlackWindow(int letters, int ground) {
        double ofLetters = luminance(letters, letters, letters);
        double ofGround = luminance(ground, ground, ground);
        for (Grid.Style style : Grid.Style.values()) {
            for (boolean colour : new boolean[] {true, false}) {
                Look look = Look.of(colour, StandardCharsets.UTF_8);
                String sent = new AttributedString("x", look.style(style)).toAnsi();
                assertFalse(
                        sent.matches("(?s).*\\[([0-9;]*;)?(2|[349][0-7]|10[0-7])[;m].*"),
                        "faint, or of a scheme: " + style);
                double contrast = contrast(sent(sent, "38", ofLetters), sent(sent, "48", ofGround));
                assertTrue(contrast >= ENOUGH, style + ": " + contrast);
            }
        }
    }

    /** Luminance of what stands behind the code, or else of the window's own. */
    private static double sent(String sent, String code, double own) {
        Matcher found = Pattern.compile("\\b" + code + ";5;(\\d+)").matcher(sent);
        return found.find() ? luminance(Integer.parseInt(found.group(1))) : own;
    }

    @Test
    void noTwoPanelsLookAlikeInColourOrWithout() {
        Set<Object> grounds = new HashSet<>();
        for (Panel panel : Panel.values()) {
            assertTrue(grounds.add(String.valueOf(Look.COLOURS.get(panel.style(false)))), panel.name());
            for (Symbols symbols : List.of(Symbols.BLOCKS, Symbols.ASCII)) {
                Grid grid = new Grid(80, 4);
                panel.draw(grid, 0, 4, symbols, false);
                assertTrue(grounds.add(symbols.hasHalves() + grid.line(0)), panel + " is told apart by its edges");
            }
        }
    }

    @Test
    void withoutColourAnAlarmIsStillToldApart() {
        Look plain = Look.of(false, StandardCharsets.UTF_8);
        for (Grid.Style style : Grid.Style.values()) {
            String sent = new AttributedString("x", plain.style(style)).toAnsi();
            assertTrue(!sent.matches(".*\\[[0-9;]*(3[0-8]|4[0-8])[;m].*"), sent);
        }
        assertTrue(
                new AttributedString("x", plain.style(Grid.Style.ALERT))
                        .toAnsi()
                        .contains("7"),
                "inverse");
    }
}
