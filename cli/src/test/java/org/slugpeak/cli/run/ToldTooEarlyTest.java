package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jline.utils.Signals;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.session.EndReason;

/** A signal that comes before anybody listens ends the program like any other, and without a word. */
class ToldTooEarlyTest {

    private static final String CLASSES = Stream.of(
                    ToldTooEarly.class, Interruption.class, Signals.class, BridgeException.class, EndReason.class)
            .map(ToldTooEarlyTest::place)
            .distinct()
            .collect(Collectors.joining(File.pathSeparator));

    private static String place(Class<?> type) {
        return Path.of(URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }

    @Test
    void aProgramThatIsToldToStopInItsFirstMomentEndsWithoutAWord() throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process program = new ProcessBuilder(java, "-cp", CLASSES, ToldTooEarly.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals("", said);
        assertEquals(Interruption.EXIT_CODE, program.waitFor());
    }
}
