package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.session.OverloadCleared;

class JsonLinesTest {

    private static final String LINE = "{\"type\":\"overload-cleared\",\"t\":0.0}\n";

    @Test
    void aLineIsThereAfterAFlush() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonLines lines = new JsonLines(out, new TestWords())) {
            lines.take(new OverloadCleared(0));
            assertEquals("", out.toString(StandardCharsets.UTF_8));
            lines.flush();
            assertEquals(LINE, out.toString(StandardCharsets.UTF_8));
        }
    }

    @Test
    void closingFlushes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonLines lines = new JsonLines(out, new TestWords());
        lines.take(new OverloadCleared(0));
        lines.close();
        lines.close();
        assertEquals(LINE, out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aPipeThatIsClosedAtTheOtherEndIsTriedOnceAndStopsNothing() {
        ClosedPipe pipe = new ClosedPipe();
        try (JsonLines lines = new JsonLines(pipe, new TestWords())) {
            for (int i = 0; i < 10_000; i++) {
                lines.take(new OverloadCleared(i));
                lines.flush();
            }
            assertTrue(lines.isBroken());
        }
        assertEquals(1, pipe.attempts);
        assertTrue(pipe.closed);
    }

    @Test
    void aFailureBetweenFlushesIsKept() {
        try (JsonLines lines = new JsonLines(new ClosedPipe(), new TestWords())) {
            assertFalse(lines.isBroken());
            for (int i = 0; i < 10_000; i++) {
                lines.take(new OverloadCleared(i));
            }
            assertTrue(lines.isBroken());
        }
    }

    private static final class ClosedPipe extends OutputStream {

        private int attempts;
        private boolean closed;

        @Override
        public void write(int letter) throws IOException {
            write(new byte[] {(byte) letter}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            attempts++;
            throw new IOException("Broken pipe");
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}
