package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is written for users leads somewhere, and quotes what the tool says. */
final class PagesForUsersTest {

    private static final Path README = Sources.ROOT.resolve("README.md");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(#[^)]*)?\\)");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final int FEWEST_LINKS = 60;
    private static final int FEWEST_QUOTES = 10;

    /** What stands in a message for what differs each time. */
    private static final String SAMPLES = "/dev/ttyUSB0|dialout";

    /** Where a piece of a message is put in: between two literals. */
    private static final Pattern JOINT = Pattern.compile("\"\\s*\\+\\s*(?:[\\w.()]+\\s*\\+\\s*)?\"");

    static List<Path> pages() throws IOException {
        List<Path> pages = new java.util.ArrayList<>();
        for (String folder : List.of("", "docs", "hardware-notes")) {
            try (Stream<Path> files = Files.list(Sources.ROOT.resolve(folder))) {
                files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
            }
        }
        return pages;
    }

    private static List<Path> linkedFrom(Path page) {
        return LINK.matcher(Sources.text(page))
                .results()
                .map(link -> page.resolveSibling(link.group(1)).normalize())
                .toList();
    }

    @Test
    void everyLinkLeadsToAFile() throws IOException {
        List<Path> linked =
                pages().stream().flatMap(page -> linkedFrom(page).stream()).toList();
        assertTrue(linked.size() >= FEWEST_LINKS, "only " + linked.size() + " links");
        assertEquals(
                List.of(), linked.stream().filter(file -> !Files.exists(file)).toList());
    }

    @Test
    void everyPageOfTheDocumentsIsOneStepFromTheReadmeOrTheDevelopersPage() throws IOException {
        List<Path> reached = Stream.of(README, Sources.ROOT.resolve("DEVELOPERS.md"))
                .flatMap(page -> linkedFrom(page).stream())
                .toList();
        assertEquals(
                List.of(),
                pages().stream()
                        .filter(page -> page.getParent().endsWith("docs") && !reached.contains(page))
                        .toList());
    }

    /** Each row of "When something is wrong" quotes what the tool says, in the second column. */
    @Test
    void everyMessageThatIsQuotedIsOne() {
        String said = Stream.concat(
                        Sources.all().stream(),
                        Stream.of(Sources.ROOT.resolve(
                                "cli/src/main/resources/org/slugpeak/cli/words/english.properties")))
                .map(Sources::text)
                .map(text -> JOINT.matcher(text).replaceAll(""))
                .collect(Collectors.joining("\n"));
        String readme = Sources.text(README);
        List<String> quotes = readme.substring(readme.indexOf("## When something is wrong"))
                .lines()
                .takeWhile(line -> !line.startsWith("Exit codes"))
                .filter(line -> line.startsWith("| "))
                .flatMap(line -> QUOTED.matcher(line.split("\\|", -1)[2]).results())
                .map((MatchResult match) -> match.group(1))
                .toList();
        assertTrue(quotes.size() >= FEWEST_QUOTES, quotes.toString());
        assertEquals(
                List.of(),
                quotes.stream()
                        .flatMap(quote -> Stream.of(quote.split(SAMPLES)))
                        .filter(piece -> piece.length() > 1 && !said.contains(piece))
                        .toList());
    }
}
