package org.slugpeak.cli.voice;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.words.VoicePhrase;

/**
 * Speaks one sentence at a time, in a thread of its own, and never an old one: a new word cuts off whatever is spoken, a new sentence cuts
 * off a sentence but lets a word end. A program that fails, or hangs, gives way to the next; when none is left that is told once, and there
 * is silence. Any thread may use it.
 */
final class Mouth implements Speech {

    private static final Duration LAST_SENTENCE = Duration.ofSeconds(20);

    private final Deque<VoiceProgram> programs;
    private final Utterance.Patience patience;
    private final Consumer<String> tell;
    private final Thread thread = new Thread(this::run, "voice");

    private Optional<String> nextWord = Optional.empty();
    private Optional<String> nextSentence = Optional.empty();
    private Optional<Said> now = Optional.empty();
    private Optional<Utterance> speaking = Optional.empty();
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
     * @param patience how long each may take
     * @param tell is told, in one line each, of a program that hangs, and that none is left that works
     */
    Mouth(List<VoiceProgram> programs, Utterance.Patience patience, Consumer<String> tell) {
        this.programs = new ArrayDeque<>(programs);
        this.patience = patience;
        this.tell = tell;
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
        speaking.ifPresent(Utterance::cutOff);
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
        Utterance.End end;
        listener().accept(true);
        try {
            end = spoken(program, said.text());
        } finally {
            listener().accept(false);
        }
        if (end != Utterance.End.WORKS) {
            programs.removeFirst();
            if (programs.isEmpty()) {
                fallSilent();
            } else {
                giveWay(program, said, end == Utterance.End.HANGS);
            }
        }
    }

    private Utterance.End spoken(VoiceProgram program, String text) throws InterruptedException {
        try {
            Utterance utterance = Utterance.begin(program, text, patience);
            begins(utterance);
            return utterance.await();
        } catch (IOException cannotStart) {
            return Utterance.End.FAILS;
        } finally {
            ends();
        }
    }

    private synchronized void begins(Utterance utterance) {
        speaking = Optional.of(utterance);
        if (hushed) {
            utterance.cutOff();
        }
    }

    private synchronized void ends() {
        speaking = Optional.empty();
    }

    /** The next program says it, unless there is something newer, or it is a word for a hand that has moved on since. */
    private void giveWay(VoiceProgram program, Said said, boolean hangs) {
        synchronized (this) {
            boolean isOld = hushed || nextWord.isPresent() || nextSentence.isPresent();
            if (!isOld && !said.isWord()) {
                nextSentence = Optional.of(said.text());
            } else if (!isOld && !hangs) {
                nextWord = Optional.of(said.text());
            }
        }
        if (hangs) {
            tell.accept(VoicePhrase.HANGS.of(program.command().get(0)));
        }
    }

    private void fallSilent() {
        synchronized (this) {
            nextWord = Optional.empty();
            nextSentence = Optional.empty();
            silent = true;
        }
        tell.accept(VoicePhrase.NO_VOICE.of());
    }

    private synchronized Consumer<Boolean> listener() {
        return listener;
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
