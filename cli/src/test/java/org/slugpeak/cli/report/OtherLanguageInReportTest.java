package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.cli.words.InInventedLanguage;

/** A report is written in the language of the user's system, and replaces one in English. */
@ExtendWith(InInventedLanguage.class)
class OtherLanguageInReportTest {

    @Test
    void theReportSpeaksIt() {
        String page = HtmlReport.of(List.of(Sessions.wholeJob("a")), Sessions.COVER);
        for (String said : List.of(
                "<html lang=\"art\">",
                "<h1>Raporto: Tarnfield 54A</h1>",
                "<caption>Turniloj</caption>",
                "AM IF: 4 turniloj, +9.20 dB")) {
            assertTrue(page.contains(said), said);
        }
    }

    @Test
    void aReportInEitherLanguageIsReplaced(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("set.html");
        for (String opening : HtmlReport.openings()) {
            Files.writeString(file, opening + "x</title>");
            assertDoesNotThrow(() -> ReportFile.refuseUnlessReplaceable(file));
        }
    }
}
