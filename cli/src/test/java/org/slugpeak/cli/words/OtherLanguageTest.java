package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.session.Finding;

/** Another language is one more file: its sentences are said, and what it lacks in English. */
@ExtendWith(InInventedLanguage.class)
class OtherLanguageTest {

    @Test
    void recordsAreSaidInIt() {
        assertEquals("fala: alia vojo", new RecordSentences().of(new Finding.Hinted(0, Hint.WRONG_WAY, Double.NaN)));
        assertEquals("unu gibo", CurvePhrase.ONE_HUMP.of());
        assertEquals("kulmo", CodeWords.of("peak"));
    }

    @Test
    void gapsMayStandInAnotherOrder() {
        assertEquals("4 turniloj, +9.20 dB", ReportPhrase.GAINED.of("+9.20 dB", 4));
    }

    @Test
    void whatItLacksIsSaidInEnglish() {
        assertEquals("3 humps: over-coupled, or circuits tuned apart", CurvePhrase.HUMPS.of(3));
        assertEquals("dip", CodeWords.of("dip"));
    }

    @Test
    void whatWasWrittenInEnglishIsKnownAgain() {
        assertEquals("Alignment report: x", ReportPhrase.TITLE.inEnglish("x"));
    }

    /** Its two lines stand for the one of the English text; they are not mixed. */
    @Test
    void helpTextsAreTakenWhole() {
        HelpTexts texts = new HelpTexts();
        assertEquals("Diru multe.", texts.getString("verbose"));
        assertEquals(
                List.of("slugpeak.ports.usage.description.0", "slugpeak.ports.usage.description.1"),
                Stream.of(texts.keySet().toArray(String[]::new))
                        .filter(key -> key.startsWith("slugpeak.ports.usage.description"))
                        .sorted()
                        .toList());
        assertEquals(
                "Keep the session in FILE (JSON lines). A file that is there already is never touched.",
                texts.getString("log"));
    }
}
