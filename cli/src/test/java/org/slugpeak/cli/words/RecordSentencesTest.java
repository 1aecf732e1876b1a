package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.bridge.testkit.EveryRecord;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.SessionRecord;

class RecordSentencesTest {

    private static final RecordSentences WORDS = new RecordSentences();

    /** The sentences as the release before the records lost their texts said them, one of each kind. */
    @Test
    void everyKindIsSaidInTheWordsItAlwaysHad() throws IOException {
        String said = EveryRecord.list().stream()
                .filter(record -> !WORDS.of(record).isEmpty())
                .map(record -> record.getClass().getSimpleName() + ": " + WORDS.of(record))
                .collect(Collectors.joining("\n"));
        assertEquals(resource("sentences.txt").strip(), said);
    }

    @Test
    void everyKindIsAmongThem() {
        Set<Class<?>> there = EveryRecord.list().stream().map(Object::getClass).collect(Collectors.toSet());
        Set<Class<?>> kinds = leaves(SessionRecord.class);
        kinds.remove(Logged.class);
        assertTrue(kinds.size() > 60, kinds.size() + " kinds");
        assertEquals(names(kinds), names(there));
    }

    private static Set<String> names(Set<Class<?>> kinds) {
        return kinds.stream().map(Class::getName).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<Class<?>> leaves(Class<?> type) {
        Set<Class<?>> leaves = new HashSet<>();
        if (type.isSealed()) {
            for (Class<?> each : type.getPermittedSubclasses()) {
                leaves.addAll(leaves(each));
            }
        } else {
            leaves.add(type);
        }
        return leaves;
    }

    @ParameterizedTest
    @EnumSource(Suspicion.class)
    void thePageOfFaultsHasEveryMessageAsItIsSaid(Suspicion suspicion) throws IOException {
        Path page = Path.of(System.getProperty("slugpeak.shared"), "..", "docs", "faults.md");
        String said = WORDS.of(new Caution.Suspected(0, suspicion, 0));
        assertTrue(Files.readString(page).contains(said), said);
    }

    private static String resource(String name) throws IOException {
        try (var in = RecordSentencesTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
