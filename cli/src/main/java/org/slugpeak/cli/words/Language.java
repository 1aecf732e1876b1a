package org.slugpeak.cli.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** The sentences of one language, from one file. Immutable; any thread may use it. */
final class Language {

    static final Language ENGLISH = new Language("english.properties");

    private final Map<Phrase, String> sentences = new EnumMap<>(Phrase.class);

    /** Reads a file that lies beside this class; refused where a sentence is missing. */
    Language(String file) {
        Properties read = read(file);
        for (Phrase phrase : Phrase.values()) {
            String sentence = read.getProperty(phrase.name());
            if (sentence == null) {
                throw new IllegalStateException(file + " has no " + phrase);
            }
            sentences.put(phrase, sentence);
        }
    }

    static Properties read(String file) {
        Properties properties = new Properties();
        try (InputStream in = Language.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + file);
            }
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties;
    }

    String say(Phrase phrase, Object... gaps) {
        String sentence = sentences.getOrDefault(phrase, "");
        return gaps.length == 0 ? sentence : String.format(Locale.ROOT, sentence, gaps);
    }
}
