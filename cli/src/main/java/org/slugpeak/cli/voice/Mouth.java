package org.slugpeak.cli.voice;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.slugpeak.bridge.time.Ticker;

/**
 * Speaks one sentence at a time, in a thread of its own, and never an old one: a new word cuts off whatever is spoken, a new sentence cuts
 * off a sentence but lets a word end. A program that fails gives way to the next; when none is left that is told once, and there is
 * silence. Any thread may use it.
 */
final class Mouth implements Speech {

    private static final Duration LAST_SENTENCE = Duration.ofSeconds(20);
    /** A program that is longer about one sentence hangs. */
    private static final Duration LONGEST = Duration.ofSeconds(30);

    private static final Duration HARD_STOP = Duration.ofSeconds(1);

    private final Deque<VoiceProgram> programs;
    private final Runnable mute;
    private final Thread thread = new Thread(this::run, "voice");

    private Optional<String> nextWord = Optional.empty();
    private Optional<String> nextSentence = Optional.empty();
    private Optional<Said> now = Optional.empty();
    private Optional<Process> speaking = Optional.empty();
    private Consumer<Boolean> listener = speaks -> {};
    private boolean hushed;
    private boolean silent;

    /**
     * Something to be said.
     *
     * @param text one sentence
     * @param isWord whether it is one for the hand, which is never held back
     */
    private record Said(String text, boolean isWord) {}

    /**
     * A mouth that is ready to speak.
     *
     * @param programs at least one; the first that works is used
     * @param mute is told, once, that none of them works
     */
    Mouth(List<VoiceProgram> programs, Runnable mute) {
        this.programs = new ArrayDeque<>(programs);
        this.mute = mute;
        thread.setDaemon(true);
        thread.start();
    }

    /** Tells whoever must be silent meanwhile when something is being spoken, and when no longer. */
    synchronized void onSpeaking(Consumer<Boolean> newListener) {
        listener = newListener;
    }

    @Override
    public synchronized void word(String text) {
        nextWord = kept(text);
        nextSentence = Optional.empty();
        hush();
        notifyAll();
    }

    @Override
    public synchronized void sentence(String text) {
        nextSentence = kept(text);
        hushSentence();
        notifyAll();
    }

    @Override
    public synchronized void dropSentence() {
        nextSentence = Optional.empty();
        hushSentence();
    }

    private Optional<String> kept(String text) {
        return silent ? Optional.empty() : Optional.of(text);
    }

    private void hushSentence() {
        if (!now.map(Said::isWord).orElse(true)) {
            hush();
        }
    }

    private void hush() {
        hushed = true;
        speaking.ifPresent(Process::destroy);
    }

    private void run() {
        try {
            while (true) {
                speak(await());
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized Said await() throws InterruptedException {
        now = Optional.empty();
        notifyAll();
        while (nextWord.isEmpty() && nextSentence.isEmpty()) {
            wait();
        }
        Said said =
                nextWord.map(text -> new Said(text, true)).orElseGet(() -> new Said(nextSentence.orElseThrow(), false));
        nextWord = Optional.empty();
        nextSentence = said.isWord() ? nextSentence : Optional.empty();
        now = Optional.of(said);
        hushed = false;
        return said;
    }

    private void speak(Said said) throws InterruptedException {
        VoiceProgram program = programs.getFirst();
        listener().accept(true);
        try {
            if (!run(program, said.text())) {
                programs.removeFirst();
                if (programs.isEmpty()) {
                    fallSilent();
                } else {
                    speak(said);
                }
            }
        } finally {
            listener().accept(false);
        }
    }

    private void fallSilent() {
        synchronized (this) {
            nextWord = Optional.empty();
            nextSentence = Optional.empty();
            silent = true;
        }
        mute.run();
    }

    private synchronized Consumer<Boolean> listener() {
        return listener;
    }

    /** Whether the program works: it did its part, or was cut off. */
    private boolean run(VoiceProgram program, String text) throws InterruptedException {
        try {
            List<String> command = new ArrayList<>(program.command());
            if (!program.readsInput()) {
                command.add(text);
            }
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            begins(process);
            try (OutputStream in = process.getOutputStream()) {
                if (program.readsInput()) {
                    in.write(text.getBytes(Charset.defaultCharset()));
                }
            } catch (IOException cutOff) {
                process.destroy();
            }
            return isDone(process, program);
        } catch (IOException cannotStart) {
            return false;
        }
    }

    private synchronized void begins(Process process) {
        speaking = Optional.of(process);
        if (hushed) {
            hush();
        }
    }

    private boolean isDone(Process process, VoiceProgram program) throws InterruptedException {
        boolean ended = process.waitFor(LONGEST.toNanos(), TimeUnit.NANOSECONDS);
        process.destroy();
        int code = ended ? process.exitValue() : 1;
        boolean cut;
        synchronized (this) {
            speaking = Optional.empty();
            cut = hushed;
        }
        if (cut && !program.silence().isEmpty()) {
            silence(program);
        }
        // A program that was told to stop ends with 128 and more, or with 1 on systems without signals.
        return code == 0 || code > 128 || cut;
    }

    private static void silence(VoiceProgram program) throws InterruptedException {
        try {
            new ProcessBuilder(program.silence())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor(HARD_STOP.toMillis(), TimeUnit.MILLISECONDS);
        } catch (IOException gone) {
            // It has just spoken; whoever took it away has silenced it.
            Thread.onSpinWait();
        }
    }

    /** Waits until the last sentence has been spoken; one that takes longer than anybody listens is cut off. */
    synchronized void finish() {
        long untilNanos = Ticker.system().nowNanos() + LAST_SENTENCE.toNanos();
        try {
            while (isBusy()) {
                long leftNanos = untilNanos - Ticker.system().nowNanos();
                if (leftNanos <= 0) {
                    nextWord = Optional.empty();
                    nextSentence = Optional.empty();
                    hush();
                    return;
                }
                wait(leftNanos / 1_000_000 + 1);
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean isBusy() {
        return thread.isAlive() && (nextWord.isPresent() || nextSentence.isPresent() || now.isPresent());
    }
}
