package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page docs/peak-finder.md says the numbers that the code has. */
class PeakFinderPageTest {

    private static final Pattern ROW = Pattern.compile("\\| `(\\w+)\\.([A-Z_]+)` \\| ([0-9.]+) \\|");
    private static final int FEWEST_ROWS = 25;

    @Test
    void everyNumberInTheTableIsTheOneInTheCode() throws ReflectiveOperationException, IOException {
        Matcher row = ROW.matcher(Files.readString(Path.of("../docs/peak-finder.md")));
        int rows = 0;
        while (row.find()) {
            Field field =
                    Class.forName("org.slugpeak.core.peak." + row.group(1)).getDeclaredField(row.group(2));
            field.setAccessible(true);
            assertEquals(Double.parseDouble(row.group(3)), ((Number) field.get(null)).doubleValue(), row.group());
            rows++;
        }
        assertTrue(rows >= FEWEST_ROWS, rows + " rows");
    }
}
