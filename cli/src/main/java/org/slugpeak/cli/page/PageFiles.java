package org.slugpeak.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.words.PagePhrase;

/**
 * The files that are served: those beside this class that are named here, and no others, whatever is asked for. Immutable; any thread may use
 * it.
 */
final class PageFiles {

    private static final String PAGE = "page.html";
    private static final String SCRIPT = "text/javascript; charset=utf-8";

    private static final Map<String, String> TYPES = Map.of(
            "page.css", "text/css; charset=utf-8",
            "page.js", SCRIPT,
            "plot.js", SCRIPT,
            "sound.js", SCRIPT,
            "icon.svg", "image/svg+xml");

    private final Map<String, Served> files = new LinkedHashMap<>();
    private final Served page;

    /** One of them. */
    record Served(String type, String content) {}

    /** Reads them all; the page gets its words, and a button for each action. */
    PageFiles(Set<KeyAction> actions) {
        TYPES.forEach((name, type) -> files.put(name, new Served(type, read(name))));
        files.put("score.json", new Served("application/json", PageEvents.score()));
        page = new Served("text/html; charset=utf-8", PageWords.fill(read(PAGE), actions));
    }

    Served page() {
        return page;
    }

    /** The file of that name; empty where none is served. */
    Optional<Served> find(String name) {
        return Optional.ofNullable(files.get(name));
    }

    /** What stands where nothing is found. */
    static Served nothing() {
        return new Served("text/plain; charset=utf-8", PagePhrase.NOT_HERE.of());
    }

    private static String read(String name) {
        try (InputStream in = PageFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
