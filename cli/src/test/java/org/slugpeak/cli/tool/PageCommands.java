package org.slugpeak.cli.tool;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The commands that a page for users tells to type: every line of a shell block, and in the text whatever begins with the tool's name. */
final class PageCommands {

    private static final Pattern BLOCK = Pattern.compile("(?ms)^ *```sh\\n(.*?)^ *```$");
    private static final Pattern IN_TEXT = Pattern.compile("`([^`]+)`");

    /** What is called by its name only, such as {@code slugpeak superhet}, is not told to be typed. */
    private static final Pattern TYPED =
            Pattern.compile("(.*\\| )?\\./slugpeak .*|slugpeak .*(--|[A-Z]{2}|\\.jsonl).*");

    private static final Pattern CUT_SHORT = Pattern.compile(".*\\.\\.\\.$");

    private PageCommands() {}

    static List<Path> pages(Path root) throws IOException {
        List<Path> pages = new java.util.ArrayList<>(List.of(root.resolve("README.md")));
        for (String folder : List.of("docs", "hardware-notes")) {
            try (Stream<Path> files = Files.list(root.resolve(folder))) {
                files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
            }
        }
        return pages;
    }

    /** In their order, each once. */
    static Set<String> of(Path page) throws IOException {
        String text = Files.readString(page);
        Stream<String> blocks = BLOCK.matcher(text)
                .results()
                .flatMap(block -> block.group(1).lines())
                .map(String::strip)
                .filter(line -> !line.isEmpty());
        Stream<String> inText = IN_TEXT.matcher(BLOCK.matcher(text).replaceAll(""))
                .results()
                .map((MatchResult code) -> code.group(1).replace('\n', ' ').replace("\\|", "|"))
                .filter(code -> TYPED.matcher(code).matches()
                        && !CUT_SHORT.matcher(code).matches());
        return Stream.concat(blocks, inText).collect(LinkedHashSet::new, Set::add, Set::addAll);
    }
}
