package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.ReportFact;

class FactsTest {

    @TempDir
    private Path folder;

    private Path shop(String text) throws IOException {
        return Files.writeString(folder.resolve("shop.toml"), text);
    }

    @Test
    void whatIsTypedCountsMoreThanTheShopsFile() throws Exception {
        Facts shop = Facts.read(shop("technician = \"M. Ember\"\nplace = \"the back room\"\n"));
        Facts both = shop.with(Facts.ofNotes(List.of("place=the fair", "Serial = 7=8 ", "serial=9")));
        assertEquals(
                Map.of(ReportFact.TECHNICIAN, "M. Ember", ReportFact.PLACE, "the fair", ReportFact.SERIAL, "9"),
                both.given());
        assertEquals(List.of("aligned by", "place"), both.personal());
    }

    @Test
    void aKeyThatIsNoneIsRefusedWithThoseThatAre() {
        for (String note : List.of("colour=red", "serial", "=x")) {
            BadConfiguration refused = assertThrows(BadConfiguration.class, () -> Facts.ofNotes(List.of(note)));
            assertTrue(refused.getMessage().contains("'" + note + "'; the keys are maker, model, serial"), note);
        }
    }

    @Test
    void aShopsFileWithMistakesIsRefusedWithItsLine() throws IOException {
        Path file = shop("technician = \"M. Ember\"\nphone = \"1\"\nplace = 3\n");
        BadConfiguration refused = assertThrows(BadConfiguration.class, () -> Facts.read(file));
        assertTrue(refused.getMessage().contains("shop.toml:2")
                && refused.getMessage().contains("shop.toml:3"));
    }

    @Test
    void aShopsFileThatIsNotThereIsToldInOneLine() {
        BadConfiguration refused = assertThrows(BadConfiguration.class, () -> Facts.read(folder.resolve("none.toml")));
        assertTrue(
                refused.getMessage().contains("--shop") && !refused.getMessage().contains("\n"));
    }
}
