package org.slugpeak.cli.outlet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SafeTextOutputTest {

    private static final String TEXT = "plain\t1\n\u00b5V \u4e2d \ud83d\udd0a \u001b[2J\u009b31m \u202e end\n";
    private static final String SHOWN = "plain\t1\n\u00b5V \u4e2d \ud83d\udd0a ?[2J?31m ? end\n";

    /** A character may be cut anywhere. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 7, 1000})
    void howeverTheBytesAreCutNothingHarmfulGetsThroughAndNothingElseIsLost(int piece) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] bytes = TEXT.getBytes(StandardCharsets.UTF_8);
        try (SafeTextOutput safe = new SafeTextOutput(out)) {
            for (int at = 0; at < bytes.length; at += piece) {
                safe.write(bytes, at, Math.min(piece, bytes.length - at));
            }
        }
        assertEquals(SHOWN, out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void bytesThatAreNoTextAtAllAreHarmlessToo() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (SafeTextOutput safe = new SafeTextOutput(out)) {
            for (int i = 0; i < 256; i++) {
                safe.write(i);
            }
            safe.write('\n');
        }
        String shown = out.toString(StandardCharsets.UTF_8).replace("\n", "").replace("\t", "");
        assertEquals(0, shown.chars().filter(Character::isISOControl).count(), shown);
    }
}
