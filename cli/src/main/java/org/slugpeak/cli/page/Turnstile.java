package org.slugpeak.cli.page;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.slugpeak.cli.words.PagePhrase;

/**
 * Slows down whoever tries addresses: each wrong one is answered after {@value #DELAY_SECONDS} s, no more than {@value #MOST_WAITING} wait, the
 * rest get no answer; and the person at the terminal is told. Any thread may use it.
 */
final class Turnstile {

    static final int DELAY_SECONDS = 1;
    static final int MOST_WAITING = 8;

    private final Executor refusing;
    private final Consumer<String> tell;
    private final AtomicInteger waiting = new AtomicInteger();
    private final AtomicInteger wrong = new AtomicInteger();

    /** Nobody has tried yet. */
    Turnstile(Executor refusing, Consumer<String> tell) {
        this.refusing = refusing;
        this.tell = tell;
    }

    /**
     * Somebody came with a wrong address.
     *
     * @param who address of the computer
     * @param refuse answers, later
     * @param hangUp ends it without an answer, now
     */
    void turnAway(String who, Runnable refuse, Runnable hangUp) {
        int count = wrong.incrementAndGet();
        if (isTold(count)) {
            tell.accept(PagePhrase.WRONG_ADDRESS.of(who, count));
        }
        if (waiting.incrementAndGet() > MOST_WAITING) {
            waiting.decrementAndGet();
            hangUp.run();
            return;
        }
        CompletableFuture.delayedExecutor(DELAY_SECONDS, TimeUnit.SECONDS, refusing)
                .execute(() -> {
                    waiting.decrementAndGet();
                    refuse.run();
                });
    }

    /** The first, then 2, 4, 8, ...: whoever tries a million addresses cannot fill a screen with it. */
    private static boolean isTold(int count) {
        return Integer.bitCount(count) == 1;
    }
}
