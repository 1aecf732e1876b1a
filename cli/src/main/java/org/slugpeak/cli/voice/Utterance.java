package org.slugpeak.cli.voice;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** One sentence in the mouth of one program. Any thread may cut it off; one thread waits for its end. */
final class Utterance {

    /** How it ended. */
    enum End {
        /** It was spoken, or cut off. */
        WORKS,
        /** The program cannot speak. */
        FAILS,
        /** The program, or the server that it asks, does not answer; it was killed. */
        HANGS
    }

    /**
     * How long a program may take.
     *
     * @param start until it speaks
     * @param character for each that it is given
     * @param stopping until it is silent when told to be
     */
    record Patience(Duration start, Duration character, Duration stopping) {

        /**
         * Nobody sets a voice slower than five characters a second; usual ones speak 12 to 20 (from memory). To start a program and to find the sound
         * card takes well under a second where anything works at all.
         */
        static Patience usual() {
            return new Patience(Duration.ofSeconds(3), Duration.ofMillis(200), Duration.ofMillis(500));
        }

        private Duration with(String text) {
            return start.plus(character.multipliedBy(text.length()));
        }
    }

    private final Process process;
    private final VoiceProgram program;
    private final Patience patience;
    private final Duration atMost;
    private volatile boolean cut;

    private Utterance(Process process, VoiceProgram program, String text, Patience patience) {
        this.process = process;
        this.program = program;
        this.patience = patience;
        atMost = patience.with(text);
    }

    static Utterance begin(VoiceProgram program, String text, Patience patience) throws IOException {
        List<String> command = new ArrayList<>(program.command());
        if (!program.readsInput()) {
            command.add(text);
        }
        Utterance begun = new Utterance(start(command), program, text, patience);
        begun.give(program.readsInput() ? text : "");
        return begun;
    }

    private static Process start(List<String> command) throws IOException {
        return new ProcessBuilder(command)
                .redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.DISCARD)
                .start();
    }

    /** All programs take UTF-8, whatever the locale. */
    private void give(String text) {
        try (OutputStream in = process.getOutputStream()) {
            in.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException endedAlready) {
            process.destroy();
        }
    }

    /** Stops it, by force where asking is not enough. */
    void cutOff() {
        cut = true;
        process.destroy();
        CompletableFuture<Process> asked =
                process.onExit().completeOnTimeout(process, patience.stopping().toMillis(), TimeUnit.MILLISECONDS);
        CompletableFuture<Void> unused = asked.thenAccept(Process::destroyForcibly);
    }

    /** Waits until it is over, and leaves nothing behind that runs or speaks. */
    End await() throws InterruptedException {
        boolean ended = process.waitFor(atMost.toMillis(), TimeUnit.MILLISECONDS);
        if (cut) {
            return silence();
        }
        if (!ended) {
            process.destroyForcibly();
            return End.HANGS;
        }
        // A program that somebody else told to stop ends with 128 and more.
        return process.exitValue() == 0 || process.exitValue() > 128 ? End.WORKS : End.FAILS;
    }

    /** A server goes on speaking when the program that asked it to has ended. */
    private End silence() throws InterruptedException {
        if (program.silence().isEmpty()) {
            return End.WORKS;
        }
        try {
            Process silencing = start(program.silence());
            boolean ended = silencing.waitFor(patience.stopping().toMillis(), TimeUnit.MILLISECONDS);
            silencing.destroyForcibly();
            return ended ? End.WORKS : End.HANGS;
        } catch (IOException gone) {
            return End.FAILS;
        }
    }
}
