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
import java.util.concurrent.ConcurrentHashMap;

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

    Properties sentences() {
        Properties copy = new Properties();
        copy.putAll(sentences);
        return copy;
    }
}
