package org.slugpeak.cli.safety;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.InInventedLanguage;

/** The safety questions are asked in the language of the user's system; where it lacks one, in English. */
@ExtendWith(InInventedLanguage.class)
class OtherLanguageInQuestionsTest {

    @Test
    void theQuestionsAreAskedInIt() throws BadConfiguration {
        StringWriter shown = new StringWriter();
        BufferedReader in = new BufferedReader(new StringReader("transformer\nyes\nno\nyes\n"));
        new SafetyQuestions(in, new PrintWriter(shown), spoken -> {}).ask();
        String asked = shown.toString();
        assertTrue(
                asked.startsWith("Radio mortigas. Kvar demandoj:\nTransformilo? (transformer, live, unknown) "), asked);
        assertTrue(asked.contains("2. Is the set alone on an isolation transformer? (yes, no) "), asked);
    }
}
