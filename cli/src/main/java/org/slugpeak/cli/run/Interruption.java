package org.slugpeak.cli.run;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jline.utils.Signals;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.session.EndReason;

/**
 * The one owner of the signals that tell the process to stop: Ctrl-C, SIGTERM, and the SIGHUP of a terminal that is closed. They
 * are taken before the virtual machine begins to shut down, because once it does the serial library closes its ports behind our
 * back and the meter could not be given back its front panel. A session is asked to end; whoever is still opening its source, or
 * writing a report, is interrupted and clears up; a command that holds nothing is left at once. Where signals cannot be taken, a
 * shutdown hook does the same. Any thread may use it.
 */
public final class Interruption {

    /** How a process ends that was told to stop and has closed everything properly. */
    public static final int EXIT_CODE = 130;

    private static final long BETWEEN_REMINDERS_MILLIS = 100;

    /**
     * Six seconds in all: a serial port that closes as it should needs half a second, and on a machine that is busy with a dozen
     * other things three were not always enough.
     */
    private static final int MOST_REMINDERS = 60;

    /** A second: whoever asks again by then means it, and one closed window does not ask twice so far apart. */
    private static final int REMINDERS_BEFORE_AGAIN_COUNTS = 10;

    private static final Interruption OF_PROCESS = new Interruption();

    private final CountDownLatch finished = new CountDownLatch(1);
    private Optional<Thread> worker = Optional.empty();
    private Optional<SessionRun> session = Optional.empty();
    private Optional<EndReason> reason = Optional.empty();
    private int reminders;

    private Interruption() {}

    /** Takes the signals over, for as long as the process lives. */
    public static void takeOver() {
        List.of("INT", "TERM")
                .forEach(name -> Signals.register(name, () -> OF_PROCESS.stop(EndReason.Known.INTERRUPTED)));
        Signals.register("HUP", () -> OF_PROCESS.stop(EndReason.Known.TERMINAL_CLOSED));
        try {
            Runtime.getRuntime().addShutdownHook(new Thread(OF_PROCESS::stopAndWait, "slugpeak-interruption"));
        } catch (IllegalStateException e) {
            // Told to stop before the first of the signals was taken: nothing has begun.
            Runtime.getRuntime().halt(EXIT_CODE);
        }
    }

    /** From now on the calling thread holds something that must be closed properly: a signal interrupts it. */
    public static void takeCare() {
        OF_PROCESS.work(Thread.currentThread());
    }

    /**
     * Runs a session to its end, or until the process is told to stop.
     *
     * @param session not yet run
     * @return whether somebody broke it off, by signal or key or by closing the terminal
     * @throws BridgeException where the source fails for good
     */
    public static boolean run(SessionRun session) throws BridgeException {
        OF_PROCESS.work(session);
        EndReason why = session.run();
        return session.isStopped() && (why == EndReason.Known.INTERRUPTED || why == EndReason.Known.TERMINAL_CLOSED);
    }

    /**
     * Whether the process was told to stop.
     *
     * @return true from the first signal on
     */
    public static boolean isRequested() {
        return OF_PROCESS.reason().isPresent();
    }

    /** Everything is closed: whoever waits need not wait any more. */
    public static void finished() {
        OF_PROCESS.finished.countDown();
    }

    private synchronized Optional<EndReason> reason() {
        return reason;
    }

    private synchronized void work(Thread thread) {
        worker = Optional.of(thread);
    }

    private synchronized void work(SessionRun begun) {
        work(Thread.currentThread());
        session = Optional.of(begun);
        boolean told = Thread.interrupted();
        reason.ifPresent(why -> ask(begun, why));
        if (told && reason.isEmpty()) {
            Thread.currentThread().interrupt();
        }
    }

    private static void ask(SessionRun session, EndReason why) {
        session.request(control -> control.quit(why));
    }

    private synchronized void stop(EndReason why) {
        if (worker.isEmpty()) {
            Runtime.getRuntime().halt(EXIT_CODE);
        }
        if (reason.isPresent()) {
            if (reminders >= REMINDERS_BEFORE_AGAIN_COUNTS) {
                Runtime.getRuntime().halt(EXIT_CODE);
            }
            return;
        }
        reason = Optional.of(why);
        session.ifPresent(running -> ask(running, why));
        Thread watch = new Thread(this::waitNoLonger, "slugpeak-patience");
        watch.setDaemon(true);
        watch.start();
    }

    private void stopAndWait() {
        if (finished.getCount() > 0 && isAtWork()) {
            stop(EndReason.Known.INTERRUPTED);
            isFinishedInTime();
        }
    }

    private synchronized boolean isAtWork() {
        return worker.isPresent();
    }

    /** Somebody may hang in a driver, or write to a pipe that nobody empties. */
    private void waitNoLonger() {
        if (!isFinishedInTime()) {
            Runtime.getRuntime().halt(EXIT_CODE);
        }
    }

    private boolean isFinishedInTime() {
        try {
            for (int i = 0; i < MOST_REMINDERS; i++) {
                remind();
                if (finished.await(BETWEEN_REMINDERS_MILLIS, TimeUnit.MILLISECONDS)) {
                    return true;
                }
            }
            System.err.println("slugpeak: the source did not let go in time; a log has no end record");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return false;
    }

    /** Once is not enough: a library that is just being loaded may swallow it. */
    private synchronized void remind() {
        reminders++;
        if (session.isEmpty()) {
            worker.ifPresent(Thread::interrupt);
        }
    }
}
