package org.slugpeak.cli.display;

import java.io.IOException;

/**
 * How the program is stopped by Ctrl-Z and goes on with {@code fg}. Immutable; any thread may use it.
 *
 * @param giveBack leaves the terminal as it was
 * @param takeAgain draws all of it again
 */
record Suspension(Runnable giveBack, Runnable takeAgain) {

    /** Where there is nothing drawn, nothing is given back. */
    static final Suspension OF_LINES = new Suspension(() -> {}, () -> {});

    /**
     * Stops every process of the job, this one among them, as a terminal does; comes back when the job goes on, or at once where there is
     * no shell that could go on with it.
     */
    static void stopJob() throws IOException {
        Process stopping =
                new ProcessBuilder("sh", "-c", "kill -TSTP 0").inheritIO().start();
        try {
            stopping.waitFor();
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }
}
