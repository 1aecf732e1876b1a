package org.slugpeak.cli.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sentences of one language, from one file beside this class, {@code LANGUAGE_COUNTRY.properties} or
 * {@code LANGUAGE.properties} by the codes of a locale; a sentence that it lacks is said in English. Immutable; any thread may use it.
 */
final class Language {

    /** What every other language falls back to. */
    static final Language ENGLISH = new Language(
            read("english.properties").orElseThrow(() -> new IllegalStateException("there is no english.properties")));

    private static final Map<Locale, Language> READ = new ConcurrentHashMap<>();

    private final Properties sentences;

    private Language(Properties sentences) {
        this.sentences = sentences;
    }

    /** The one that the user's system speaks, where there is a file for it. */
    static Language today() {
        return READ.computeIfAbsent(Locale.getDefault(Locale.Category.DISPLAY), Language::of);
    }

    private static Language of(Locale locale) {
        return List.of(locale.getLanguage() + "_" + locale.getCountry(), locale.getLanguage()).stream()
                .flatMap(name -> read(name + ".properties").stream())
                .findFirst()
                .map(Language::new)
                .orElse(ENGLISH);
    }

    private static Optional<Properties> read(String file) {
        try (InputStream in = Language.class.getResourceAsStream(file)) {
            if (in == null) {
                return Optional.empty();
            }
            Properties properties = new Properties();
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return Optional.of(properties);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String say(String key, Object... gaps) {
        String sentence = sentence(key);
        return gaps.length == 0 ? sentence : String.format(Locale.ROOT, sentence, gaps);
    }

    private String sentence(String key) {
        return find(key).orElseThrow(() -> new IllegalStateException("english.properties has no " + key));
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(sentences.getProperty(key))
                .or(() -> Optional.ofNullable(ENGLISH.sentences.getProperty(key)));
    }

    /** Those that begin so, without it; of a text that this language has no line is taken from the English one. */
    Set<String> keys(String prefix) {
        Set<String> own = sentences.stringPropertyNames().stream()
                .filter(key -> key.startsWith(prefix))
                .map(key -> key.substring(prefix.length()))
                .collect(Collectors.toSet());
        if (this == ENGLISH) {
            return own;
        }
        Set<String> texts = own.stream().map(Language::text).collect(Collectors.toSet());
        return Stream.concat(own.stream(), ENGLISH.keys(prefix).stream().filter(key -> !texts.contains(text(key))))
                .collect(Collectors.toSet());
    }

    /** The key without the number of a line. */
    private static String text(String key) {
        return key.replaceFirst("\\.\\d+$", "");
    }

    Properties sentences() {
        Properties copy = new Properties();
        copy.putAll(sentences);
        return copy;
    }
}
