package org.slugpeak.cli.outlet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConsoleEncodingTest {

    private static Properties system(String name, String page) {
        Properties system = new Properties();
        system.setProperty("os.name", name);
        if (page != null) {
            system.setProperty("sun.stdout.encoding", page);
        }
        return system;
    }

    @ParameterizedTest
    @CsvSource({
        "Windows 11, cp850, IBM850",
        "Windows 10, cp437, IBM437",
        "Windows 11, UTF-8, UTF-8",
        "Windows 11, , UTF-8",
        "Windows 11, cp9999, UTF-8",
        "Linux, ISO-8859-1, UTF-8",
        "Mac OS X, US-ASCII, UTF-8"
    })
    void onlyAConsoleOfWindowsHasACodePageOfItsOwn(String system, String page, String expected) {
        assertEquals(
                expected, ConsoleEncoding.of(system(system, page), "stdout").name());
    }

    /** Code page 850 by IBM's table: the middle dot is FA, the u with two dots 81; a triangle it lacks. */
    @Test
    void linesAreShownInTheCodePageAndWhatItLacksIsAQuestionMark() throws IOException {
        ByteArrayOutputStream shown = new ByteArrayOutputStream();
        try (SafeTextOutput out =
                new SafeTextOutput(shown, ConsoleEncoding.of(system("Windows 11", "cp850"), "stdout"))) {
            for (byte each : "T2 \u00b7 M\u00fcller \u25b2".getBytes(StandardCharsets.UTF_8)) {
                out.write(each);
            }
        }
        byte[] expected = "T2 . M.ller ?".getBytes(StandardCharsets.US_ASCII);
        expected[3] = (byte) 0xFA;
        expected[6] = (byte) 0x81;
        assertArrayEquals(expected, shown.toByteArray());
    }
}
