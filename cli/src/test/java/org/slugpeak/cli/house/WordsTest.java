package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.words.ReportFact;
import org.slugpeak.cli.words.Saying;

/** Every key of a sentence is used, and said with as many arguments as its sentence has gaps. */
class WordsTest {

    private static final Pattern GAP = Pattern.compile("%[-+#0 ,(]*\\d*(\\.\\d+)?[a-zA-Z]");

    private static final SaidPhrases PHRASES = new SaidPhrases(SourceTrees.of(Sources.of("cli")));

    /** Those that another class says than the one that chooses them, with the arguments that it gives. */
    private static final Map<String, Integer> SAID_BY_ANOTHER = Map.ofEntries(
            Map.entry("CheckPhrase.AT_LEAST", 3),
            Map.entry("CheckPhrase.AT_MOST", 3),
            Map.entry("CheckPhrase.BETWEEN_INTERVALS", 1),
            Map.entry("CheckPhrase.MILLISECONDS", 1),
            Map.entry("CheckPhrase.PER_SECOND", 1),
            Map.entry("CheckPhrase.SIGMA", 2),
            Map.entry("CheckPhrase.SMALLEST_STEP", 2),
            Map.entry("CurvePhrase.LOWER_PEAK", 2),
            Map.entry("CurvePhrase.UPPER_PEAK", 2),
            Map.entry("Phrase.DIAL", 1),
            Map.entry("Phrase.DUMMY_ANTENNA", 1),
            Map.entry("Phrase.GENERATOR", 1),
            Map.entry("Phrase.GENERATOR_MEASURED", 1),
            Map.entry("Phrase.GENERATOR_TO", 1),
            Map.entry("Phrase.GENERATOR_TO_HIGH", 1),
            Map.entry("Phrase.METER_AT", 1),
            Map.entry("Phrase.METER_AT_HIGH", 1),
            Map.entry("Phrase.MODULATION", 1),
            Map.entry("Phrase.ON_AC", 1),
            Map.entry("Phrase.ON_DC", 1),
            Map.entry("Phrase.SHOWN_OSCILLATOR_ABOVE", 1),
            Map.entry("Phrase.SHOWN_OSCILLATOR_BELOW", 1),
            Map.entry("Phrase.STEPS", 2),
            Map.entry("Phrase.STEPS_FINE", 2),
            Map.entry("Phrase.UNREADABLE_AC", 1),
            Map.entry("Phrase.UNREADABLE_DC", 1),
            Map.entry("SeekPhrase.ABOVE_LEAST", 1),
            Map.entry("SeekPhrase.BELOW_BEST", 1));

    private static Stream<Saying> all() {
        return Stream.of(Saying.class.getPermittedSubclasses())
                .flatMap(kind -> Stream.of(kind.getEnumConstants()))
                .map(Saying.class::cast);
    }

    private static String name(Saying saying) {
        return saying.getClass().getSimpleName() + "." + saying.name();
    }

    private static int gaps(Saying saying) {
        return (int) GAP.matcher(saying.inEnglish().replace("%%", "")).results().count();
    }

    @Test
    void everyKeyIsUsed() {
        Set<String> used = new TreeSet<>(PHRASES.said.keySet());
        used.addAll(PHRASES.passedOn);
        Stream.of(ReportFact.values()).map(WordsTest::name).forEach(used::add); // asked for by what a user types
        assertEquals(all().map(WordsTest::name).collect(Collectors.toCollection(TreeSet::new)), used);
    }

    @Test
    void everySentenceIsGivenAsManyArgumentsAsItHasGaps() {
        List<String> wrong = new ArrayList<>();
        all().forEach(saying -> {
            Set<Integer> said = PHRASES.said.getOrDefault(name(saying), Set.of());
            if (!said.isEmpty() && !said.equals(Set.of(gaps(saying)))) {
                wrong.add(name(saying) + " is said with " + said + ", but reads " + saying.inEnglish());
            }
        });
        assertEquals(List.of(), wrong);
        assertTrue(PHRASES.said.size() > 300, PHRASES.said.size() + " keys");
    }

    @Test
    void whatAnotherClassSaysHasTheGapsThatThatClassFills() {
        Map<String, Integer> withGaps = all().filter(
                        saying -> PHRASES.passedOn.contains(name(saying)) && gaps(saying) > 0)
                .collect(Collectors.toMap(WordsTest::name, WordsTest::gaps));
        assertEquals(SAID_BY_ANOTHER, withGaps);
    }
}
