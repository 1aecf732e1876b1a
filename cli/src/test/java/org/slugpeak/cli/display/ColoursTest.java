package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;

/**
 * Contrast by the formula of the Web Content Accessibility Guidelines (W3C, WCAG 2.2, "relative luminance" and "contrast
 * ratio"); at least 4.5:1 by success criterion 1.4.3. Colours are those of the 6 x 6 x 6 cube of 256-colour terminals.
 */
class ColoursTest {

    private static final double ENOUGH = 4.5;
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

    @Test
    void blueReadsOnBlackAndOnWhite() {
        double blue = luminance(Look.BLUE);
        assertTrue(contrast(blue, luminance(0, 0, 0)) >= ENOUGH);
        assertTrue(contrast(blue, luminance(255, 255, 255)) >= ENOUGH);
    }

    @Test
    void alarmsReadOnTheirOwnGround() {
        assertTrue(contrast(luminance(Look.BLACK), luminance(Look.ORANGE)) >= ENOUGH);
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

    @Test
    void anAlarmAndAReadingDifferInMoreThanHue() {
        Look look = Look.of(true, StandardCharsets.UTF_8);
        String alarm = new AttributedString("x", look.style(Grid.Style.ALERT)).toAnsi();
        String reading = new AttributedString("x", look.style(Grid.Style.READING)).toAnsi();
        assertTrue(alarm.contains("48;5;" + Look.ORANGE), "a ground of its own");
        assertTrue(!reading.contains("48;5;"), "the terminal's ground");
    }
}
