package org.slugpeak.bridge.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;

final class EmptyRunTest {

    @Test
    void threeHundredLinesOfRemarksAndNothingMayStandInARow() throws BadConfiguration {
        String run = "# a remark\n\n  # another\n".repeat(100);
        assertEquals(OptionalInt.empty(), EmptyRun.lineTooFar("a = 1\n" + run + "b = 2\n" + run));
        assertEquals(OptionalInt.of(302), EmptyRun.lineTooFar("a = 1\n" + run + "\nb = 2\n"));
        assertEquals(
                2,
                TomlFile.read("f.toml", "plan", run + "b = 2\n", top -> top.number("b"))
                        .orElseThrow());
    }

    @Test
    void whatHasMoreIsRefusedInOneLineThatSaysWhere() {
        String message = assertThrows(
                        BadConfiguration.class,
                        () -> TomlFile.read("f.toml", "plan", "#\n".repeat(100_000), top -> top))
                .getMessage();
        assertTrue(message.startsWith("f.toml:301: more than 300 lines in a row"), message);
    }
}
