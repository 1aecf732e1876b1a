package org.slugpeak.cli.run;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.BridgeException;

/**
 * Lets a session end properly when the process is told to stop (Ctrl-C, SIGTERM): the virtual machine waits in its shutdown
 * hook until the session has closed its log. Used by the thread that runs the session.
 */
public final class Interruption {

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
        Thread hook = new Thread(interruption::stop, "slugpeak-interruption");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            return session.run();
        } finally {
            interruption.finished.countDown();
        }
    }

    private void stop() {
        session.request(control -> control.quit("interrupted"));
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
