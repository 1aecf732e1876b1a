package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvSourceTest {

    @TempDir
    Path folder;

    @Test
    void readsOneValueALineFiftyASecond() throws Exception {
        Heard heard = read("1.25\n1.5\n-2e-3\n");
        assertEquals(List.of(1.25, 1.5, -0.002), heard.values());
        assertEquals(List.of(0.0, 0.02, 0.04), heard.seconds());
    }

    @Test
    void readsSecondsAndValue() throws Exception {
        Heard heard = read("0.1,5\n0.30,6\n1e0,7");
        assertEquals(List.of(5.0, 6.0, 7.0), heard.values());
        assertEquals(List.of(0.1, 0.3, 1.0), heard.seconds());
    }

    private Heard read(String text) throws Exception {
        return Heard.all(open(text));
    }

    private CsvSource open(String text) throws Exception {
        return CsvSource.open(file(text.getBytes(StandardCharsets.UTF_8)), CsvOptions.defaults());
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("sweep.csv"), bytes);
    }
}
