package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.word.Coded;

class LanguageTest {

    private static final Properties ENGLISH = Language.ENGLISH.sentences();

    /** The keys that the program may ask for. */
    static Stream<String> keys() {
        Stream<String> sayings = Stream.of(Saying.class.getPermittedSubclasses())
                .flatMap(kind -> Stream.of(kind.getEnumConstants()))
                .map(Saying.class::cast)
                .map(each -> each.kind() + "." + each.name());
        return Stream.concat(sayings, codes().map(code -> "code." + code));
    }

    private static Stream<String> codes() {
        Stream<Coded> coded = Stream.<Coded[]>of(
                        Seek.values(),
                        Condition.values(),
                        Link.State.values(),
                        Overload.Cause.values(),
                        CheckKind.values(),
                        MeterPoint.values())
                .flatMap(Stream::of);
        return Stream.of(
                        coded.map(Coded::code),
                        Stream.of(Trend.values()).map(Trend::code),
                        Stream.of(NoPeakReason.values()).map(NoPeakReason::code))
                .flatMap(each -> each);
    }

    @Test
    void everyKeyHasASentenceAndEverySentenceAKey() {
        Set<String> keys = keys().collect(Collectors.toCollection(TreeSet::new));
        assertTrue(keys.size() > 300, keys.size() + " keys");
        Set<String> sentences = ENGLISH.stringPropertyNames().stream()
                .filter(key -> !key.startsWith("help."))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(keys, sentences);
    }

    @Test
    void noSentenceIsBlank() {
        assertTrue(keys().noneMatch(key -> ENGLISH.getProperty(key).isBlank()));
    }

    @Test
    void inEnglishACodeIsSaidAsItIsSpelt() {
        codes().forEach(code -> assertEquals(code, CodeWords.of(code)));
    }
}
