package org.slugpeak.cli.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
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
        Locale locale = Locale.getDefault(Locale.Category.DISPLAY);
        Language known = READ.get(locale);
        if (known == null) {
            known = of(locale);
            READ.put(locale, known);
        }
        return known;
    }

    private static Language of(Locale locale) {
        String language = locale.getLanguage();
        for (String name : List.of(language + "_" + locale.getCountry(), language)) {
            Optional<Properties> read = read(name + ".properties");
            if (read.isPresent()) {
                return new Language(read.get());
            }
        }
        return ENGLISH;
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
        String own = sentences.getProperty(key);
        return Optional.ofNullable(own == null ? ENGLISH.sentences.getProperty(key) : own);
    }

    /**
     * Those that begin so, without it; of a text that this language has no line is taken from the English one. Loops, since every help
     * waits for it, and a virtual machine that has just started takes longer to prepare a stream.
     */
    Set<String> keys(String prefix) {
        Set<String> keys = new HashSet<>();
        for (String key : sentences.stringPropertyNames()) {
            if (key.startsWith(prefix)) {
                keys.add(key.substring(prefix.length()));
            }
        }
        if (this != ENGLISH) {
            addMissing(keys, ENGLISH.keys(prefix));
        }
        return keys;
    }

    private static void addMissing(Set<String> keys, Set<String> english) {
        Set<String> texts = new HashSet<>();
        keys.forEach(key -> texts.add(text(key)));
        english.stream().filter(key -> !texts.contains(text(key))).forEach(keys::add);
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
