package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of promises names tests, and every one of them is there. */
final class PromisesTest {

    private static final Path ROOT =
            Path.of(System.getProperty("slugpeak.shared")).toAbsolutePath().getParent();
    private static final Pattern NAMED = Pattern.compile("`(\\w+)#(\\w+)`");
    private static final Pattern SCRIPT = Pattern.compile("`(\\.ci/checks/[\\w-]+\\.sh)`");
    private static final Pattern FAULT = Pattern.compile("`faults: ([\\w-]+)`");
    private static final int FEWEST = 20;

    private static String page() throws IOException {
        return Files.readString(ROOT.resolve("docs/promises.md"));
    }

    private static String sources(String fileName) throws IOException {
        StringBuilder found = new StringBuilder();
        for (String module : List.of("core", "bridge", "cli")) {
            try (Stream<Path> all = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
                all.filter(file -> file.getFileName().toString().matches(fileName))
                        .map(PromisesTest::text)
                        .forEach(found::append);
            }
        }
        return found.toString();
    }

    private static String campaign() throws IOException {
        try (Stream<Path> all = Files.list(ROOT.resolve("cli/src/test/java/org/slugpeak/cli/faults"))) {
            return all.map(PromisesTest::text).collect(Collectors.joining());
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyNamedTestIsThere() throws IOException {
        List<String[]> named = NAMED.matcher(page())
                .results()
                .map(match -> new String[] {match.group(1), match.group(2)})
                .toList();
        assertTrue(named.size() >= FEWEST, "only " + named.size() + " tests are named");
        for (String[] each : named) {
            String source = sources(each[0] + "\\.java");
            assertTrue(source.contains("void " + each[1] + "("), each[0] + " has no test " + each[1]);
        }
    }

    @Test
    void everyNamedScriptAndRowOfTheCampaignIsThere() throws IOException {
        Matcher scripts = SCRIPT.matcher(page());
        while (scripts.find()) {
            assertTrue(Files.exists(ROOT.resolve(scripts.group(1))), scripts.group(1));
        }
        String campaign = campaign();
        List<String> missing = FAULT.matcher(page())
                .results()
                .map(match -> match.group(1))
                .filter(name -> !campaign.contains('"' + name + '"')
                        && !campaign.contains('"' + name.replaceFirst("^bytes-", "") + '"'))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void everyPromiseHasATest() throws IOException {
        List<String> bare = page().lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| what happens"))
                .filter(line -> !line.matches(".*\\| `[^|]+` \\|$"))
                .toList();
        assertEquals(List.of(), bare);
    }
}
