package org.slugpeak.cli.outlet;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The standard output of the process. Whether all that was written there got there is kept here, for the exit code: what was asked
 * for and not written is said at once, and once. Any thread may use it.
 */
public final class StandardOutput {

    /** A process has one. */
    private static final StandardOutput OF_PROCESS = new StandardOutput(new FileOutputStream(FileDescriptor.out));

    private final RememberingOutput bytes;

    private StandardOutput(OutputStream out) {
        this.bytes = new RememberingOutput(
                out,
                failure ->
                        System.err.println("slugpeak: standard output takes nothing any more (" + failure.getMessage()
                                + "): what was to follow there is missing; make room, or keep its reader running"));
    }

    /** Lets everything that is printed in the process, by whomever, go through here. */
    public static void takeOver() {
        System.setErr(
                text(new FileOutputStream(FileDescriptor.err), ConsoleEncoding.of(System.getProperties(), "stderr")));
        System.setOut(text());
    }

    /**
     * For records that make themselves harmless, as JSON lines do.
     *
     * @return unbuffered; closing it does nothing
     */
    public static OutputStream bytes() {
        return OF_PROCESS.bytes;
    }

    /**
     * For lines of text.
     *
     * @return flushed with each line
     */
    public static PrintStream text() {
        return text(OF_PROCESS.bytes, ConsoleEncoding.of(System.getProperties(), "stdout"));
    }

    /**
     * Whether something was lost.
     *
     * @return true from the first failure on
     */
    public static boolean isBroken() {
        return OF_PROCESS.bytes.isBroken();
    }

    private static PrintStream text(OutputStream out, Charset encoding) {
        return new PrintStream(
                new SafeTextOutput(new BufferedOutputStream(out), encoding), true, StandardCharsets.UTF_8);
    }
}
