package org.slugpeak.bridge.generator;

import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortLost;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;

/**
 * A generator with a thread of its own, so that a session that reads a meter never waits for it. The newest wish counts. While it
 * does not answer, the wish is told again; when it is back it is told everything. One thread at a time calls it.
 */
public final class RunningGenerator implements FedGenerator {

    /** A wish is heard so soon, and a plug that was pulled noticed. */
    private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(20);

    /** A dialogue that was interrupted ends at once. */
    private static final long ENDING_MILLIS = 500;

    private final DescribedGenerator generator;
    private final AtomicReference<Optional<GeneratorSetting>> wish = new AtomicReference<>(Optional.empty());
    private final Queue<GeneratorNews> news = new ConcurrentLinkedQueue<>();
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread worker;

    private Optional<GeneratorSetting> last = Optional.empty();
    private boolean gone;

    /**
     * From now on only this tells the generator anything.
     *
     * @param generator open
     */
    public RunningGenerator(DescribedGenerator generator) {
        this.generator = generator;
        this.worker = new Thread(this::run, "generator");
        worker.setDaemon(true);
        worker.start();
    }

    @Override
    public GeneratorReach reach() {
        return generator.reach();
    }

    @Override
    public void want(GeneratorSetting wanted) {
        wish.set(Optional.of(wanted));
    }

    @Override
    public Optional<GeneratorNews> news() {
        return Optional.ofNullable(news.poll());
    }

    private void run() {
        try {
            while (!stop.await(LOOK_NANOS, TimeUnit.NANOSECONDS)) {
                look();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // told to stop in the middle of a dialogue
        }
    }

    private void look() throws InterruptedException {
        Optional<GeneratorSetting> newest = wish.getAndSet(Optional.empty());
        last = newest.or(() -> last);
        boolean linked = generator.isLinked();
        boolean again = linked ? gone : !gone;
        if (last.isPresent() && (newest.isPresent() || again)) {
            obey(last.get());
        }
    }

    private void obey(GeneratorSetting wanted) throws InterruptedException {
        try {
            GeneratorSetting real = generator.set(wanted);
            gone = false;
            if (!stop.await(generator.reach().settlingNanos(), TimeUnit.NANOSECONDS)) {
                news.add(new GeneratorNews.Stands(wanted, real));
            }
        } catch (PortLost e) {
            if (!gone) {
                news.add(new GeneratorNews.Fails(true, String.valueOf(e.getMessage())));
            }
            gone = true;
        } catch (BridgeException e) {
            gone = false;
            news.add(new GeneratorNews.Fails(false, String.valueOf(e.getMessage())));
        }
    }

    /**
     * Leaves it with its output off.
     *
     * @return one line where it may still give a signal; empty where it has said that it is off
     */
    public Optional<String> leave() {
        stop.countDown();
        worker.interrupt();
        boolean interrupted = Thread.interrupted();
        try {
            worker.join(ENDING_MILLIS);
        } catch (InterruptedException e) {
            interrupted = true;
        }
        Optional<String> problem = generator.leave();
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return problem;
    }
}
