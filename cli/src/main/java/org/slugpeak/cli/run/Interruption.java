package org.slugpeak.cli.run;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jline.utils.Signals;
import org.slugpeak.bridge.source.BridgeException;

/**
 * Lets a session end properly when the process is told to stop (Ctrl-C, SIGTERM). The signals are taken before the virtual
 * machine begins to shut down, because once it does the serial library closes its ports behind our back and the meter could
 * not be given back its front panel. Where signals cannot be taken, a shutdown hook waits for the session instead. Used by the
 * thread that runs the session.
 */
public final class Interruption {

    private static final List<String> SIGNALS = List.of("INT", "TERM");
    private static final long PATIENCE_SECONDS = 3;

    private final SessionRun session;
    private final CountDownLatch finished = new CountDownLatch(1);

    private Interruption(SessionRun session) {
        this.session = session;
    }

    /**
     * Runs a session to its end, or until the process is told to stop.
     *
     * @param session not yet run
     * @return why it ended
     * @throws BridgeException where the source fails for good
     */
    public static String run(SessionRun session) throws BridgeException {
        Interruption interruption = new Interruption(session);
        Runtime.getRuntime().addShutdownHook(new Thread(interruption::await, "slugpeak-interruption"));
        SIGNALS.forEach(signal -> Signals.register(signal, interruption::stop));
        try {
            return session.run();
        } finally {
            interruption.finished.countDown();
        }
    }

    private void stop() {
        session.request(control -> control.quit("interrupted"));
    }

    private void await() {
        stop();
        try {
            boolean closed = finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (!closed) {
                System.err.println("slugpeak: the source did not let go in time; the log has no end record");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
