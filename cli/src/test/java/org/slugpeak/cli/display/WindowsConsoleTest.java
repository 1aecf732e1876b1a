package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;

/** The screen on the consoles of Windows as the terminal library describes them, with the code pages that they have. */
class WindowsConsoleTest {

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    private final ByteArrayOutputStream sent = new ByteArrayOutputStream();

    private Screen screen(String type, String encoding) throws IOException {
        LineDisciplineTerminal terminal = new LineDisciplineTerminal("test", type, sent, Charset.forName(encoding));
        terminal.setSize(Size.of(COLUMNS, ROWS));
        Screen screen = new Screen(terminal, List.of(new KeyHint(KeyAction.QUIT, "q")), false, () -> 0);
        screen.take(Sessions.start(Seek.PEAK));
        screen.take(Sessions.reading(1, 0.5, 0.5, Trend.RISING));
        screen.redraw();
        terminal.flush();
        return screen;
    }

    /** The oldest has sixteen colours and does not know how to take a whole window over. */
    @ParameterizedTest
    @CsvSource({
        "windows, IBM850, false",
        "windows, IBM437, false",
        "windows-conemu, IBM850, true",
        "windows-256color, windows-1252, true",
        "windows-vtp, UTF-8, true"
    })
    void showsThePageInWhatTheConsoleKnows(String type, String encoding, boolean has256Colours) throws IOException {
        screen(type, encoding);
        String text = sent.toString(Charset.forName(encoding));
        ScreenTerminal window = new ScreenTerminal(COLUMNS, ROWS);
        window.write(text);
        assertTrue(window.toString().contains("turn slowly, looking for the peak"), window::toString);
        Look look = Look.of(new LineDisciplineTerminal("t", type, sent, StandardCharsets.UTF_8), Map.of(), false);
        assertEquals(has256Colours, look.style(Grid.Style.ALERT).toAnsi().contains("5;"));
        if (!encoding.equals("UTF-8")) {
            assertFalse(text.chars().anyMatch(each -> each > '~'), text);
        }
    }
}
