package org.slugpeak.cli.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.PseudoTerminal;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.cli.tool.PackagedTool;

/** The window in which it runs is closed, with the signal that goes with it or without: the session ends, with its log, in every view. */
final class TerminalClosed implements Trial {

    private static final List<String> VIEWS = List.of("screen", "plain", "lines", "none");
    private static final long PATIENCE_SECONDS = 20;
    private static final long ENOUGH_BYTES = 1000;
    private static final int LOOK_MILLIS = 20;

    @Override
    public String name() {
        return "terminal-closed";
    }

    @Override
    public int count() {
        return 40;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Path log = folder.resolve("log.jsonl");
        String view = VIEWS.get(random.nextInt(VIEWS.size()));
        // Whoever shows nothing hears of no end but by the signal.
        boolean signalled = view.equals("none") || random.nextBoolean();
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(ScpiResponder.reading("+1.25000000E+00"));
            Process tool = watchedUntilLogged(port.path(), view, log, signalled);
            boolean ended = tool.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            tool.destroyForcibly();
            Trial.require(ended, "--view " + view + " lives on, signal: " + signalled);
            Trial.require(KeptLog.read(log).closed(), "--view " + view + " has not closed its log");
        }
        return "";
    }

    /** Runs the tool in a window of its own, as a terminal program makes it, and closes the window. */
    private static Process watchedUntilLogged(String port, String view, Path log, boolean signalled)
            throws IOException {
        try (PseudoTerminal window = PseudoTerminal.open()) {
            String line = "exec setsid " + (signalled ? "--ctty" : "")
                    + " sh -c 'exec \"$0\" \"$@\" <\"$W\" >\"$W\" 2>&1' \"$SLUGPEAK\" watch --from " + port + " --view "
                    + view + " --cue off --log " + log + " <\"$W\"";
            ProcessBuilder builder = PackagedTool.hearingSignals("sh", "-c", line);
            builder.environment().put("W", window.path());
            builder.environment().put("TERM", "xterm");
            builder.environment().put("SLUGPEAK", System.getProperty("slugpeak.launcher"));
            builder.environment().put("XDG_STATE_HOME", String.valueOf(log.getParent()));
            Process tool = builder.start();
            while (tool.isAlive() && !(Files.exists(log) && Files.size(log) > ENOUGH_BYTES)) {
                window.read(LOOK_MILLIS);
            }
            return tool;
        }
    }
}
