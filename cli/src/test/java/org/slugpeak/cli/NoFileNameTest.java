package org.slugpeak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * A name that the system takes for none, such as {@code tuesday:1.jsonl} or {@code what?.csv} on Windows. Here it is one with a zero
 * within, which no system takes.
 */
class NoFileNameTest {

    private static final String NO_NAME = "tues\0day.jsonl";

    /** Opens what it is told to. */
    @Command(name = "opener")
    static final class Opener implements Runnable {

        @Option(names = "--from")
        private String address = "";

        /** Picocli alone looks at it. */
        @SuppressWarnings("UnusedVariable")
        @Option(names = "--log")
        private Path log = Path.of("log");

        @Override
        public void run() {
            throw new InvalidPathException(address, "Illegal char <?>", 4);
        }
    }

    private static String said(String... args) {
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new Opener()).setErr(new PrintWriter(err, true));
        line.setParameterExceptionHandler(Failures::usage);
        line.setExecutionExceptionHandler(Failures::execution);
        assertEquals(2, line.execute(args));
        return err.toString();
    }

    @Test
    void isSaidInOneLineByTheCommand() {
        assertEquals(
                "opener: 'what?.csv' can be no file name on this system (Illegal char <?>): choose another"
                        + System.lineSeparator(),
                said("--from", "what?.csv"));
    }

    @Test
    void isSaidInOneLineByTheOption() {
        String said = said("--log", NO_NAME);
        assertTrue(said.contains("can be no file name on this system (Nul character not allowed"), said);
        assertEquals(1, said.lines().count(), said);
    }
}
