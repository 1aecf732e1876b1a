package org.slugpeak.cli.display;

import java.time.Duration;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** What the user has asked for and nobody has seen to yet. Any thread may put and take. */
public final class Keys {

    private static final int LONGEST_ENTRY = 12;

    private final LinkedBlockingQueue<KeyAction> waiting = new LinkedBlockingQueue<>();
    private final Queue<String> typed = new ConcurrentLinkedQueue<>();
    private Optional<KeyAction> typesAfter = Optional.empty();
    private Optional<String> entry = Optional.empty();

    /** No keys yet. */
    public Keys() {}

    /**
     * Adds a wish.
     *
     * @param action what is asked for
     */
    public synchronized void put(KeyAction action) {
        if (typesAfter.equals(Optional.of(action))) {
            entry = Optional.of("");
        } else {
            waiting.add(action);
        }
    }

    /**
     * From now on keys are taken for text after this one, until enter or escape.
     *
     * @param action begins it; it is no wish any more
     */
    public synchronized void typeAfter(KeyAction action) {
        typesAfter = Optional.of(action);
    }

    /**
     * What has been typed so far.
     *
     * @return empty where nobody is typing
     */
    public synchronized Optional<String> entry() {
        return entry;
    }

    /**
     * Takes what was typed and ended with enter; never waits.
     *
     * @return empty where there is none
     */
    public Optional<String> pollTyped() {
        return Optional.ofNullable(typed.poll());
    }

    /** Whether a key was taken for text, and asks for nothing. */
    synchronized boolean type(String key) {
        if (entry.isEmpty()) {
            return false;
        }
        String text = entry.get();
        switch (key) {
            case "enter" -> end(text);
            case "escape" -> entry = Optional.empty();
            case "backspace" -> entry = Optional.of(text.substring(0, Math.max(0, text.length() - 1)));
            default -> {
                boolean taken = key.length() == 1;
                entry = Optional.of(taken && text.length() < LONGEST_ENTRY ? text + key : text);
                return taken;
            }
        }
        return true;
    }

    private void end(String text) {
        entry = Optional.empty();
        if (!text.isEmpty()) {
            typed.add(text);
        }
    }

    /**
     * Takes the oldest wish; never waits.
     *
     * @return empty where there is none
     */
    public Optional<KeyAction> poll() {
        return Optional.ofNullable(waiting.poll());
    }

    /**
     * Takes the oldest wish, waiting for one if need be.
     *
     * @param atMost how long to wait
     * @return empty if none came
     * @throws InterruptedException if the thread is interrupted while it waits
     */
    public Optional<KeyAction> await(Duration atMost) throws InterruptedException {
        return Optional.ofNullable(waiting.poll(atMost.toNanos(), TimeUnit.NANOSECONDS));
    }
}
