package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page of what to touch names files, and every one of them is there. */
final class HowToAddTest {

    private static final Pattern PATH = Pattern.compile("`([\\w.…-]+(?:/[\\w.…-]+)+|[\\w-]+\\.md)`");
    private static final int FEWEST = 30;

    private static List<String> named() {
        return PATH.matcher(Sources.text(Sources.ROOT.resolve("docs/how-to-add.md")))
                .results()
                .map(match -> match.group(1).replace("…/", "src/main/java/org/slugpeak/"))
                .toList();
    }

    @Test
    void everyNamedFileIsThere() {
        List<String> named = named();
        assertTrue(named.size() >= FEWEST, "only " + named.size() + " files are named");
        assertEquals(
                List.of(),
                named.stream()
                        .filter(path -> !Files.exists(Sources.ROOT.resolve(path)))
                        .toList());
    }

    @Test
    void everyRegistrationIsNamed() {
        String page = String.join("\n", named());
        for (String service : List.of("DecoderProvider", "CarrierProvider")) {
            assertTrue(page.contains("META-INF/services/org.slugpeak.bridge.instrument." + service), service);
        }
    }
}
