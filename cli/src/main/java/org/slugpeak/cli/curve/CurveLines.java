package org.slugpeak.cli.curve;

import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.Console;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.KeyBindings;
import org.slugpeak.cli.display.Keys;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.curve.CurveRecords;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.SessionRecord;

/**
 * Says in lines what to set and what was read, rings the terminal's bell at each point, and listens to the keys: r, n or Enter
 * takes the reading, p or b the one before again, k leaves the point out, q ends. One thread: the session's.
 */
public final class CurveLines implements SessionOutput {

    private static final Set<String> SAID = Set.of("ask", "rest", "no-signal", "curve-over");

    private final PrintStream error;
    private final String unit;
    private final Keys keys = new Keys();
    private final Optional<Console> console;

    /**
     * Lines on standard error.
     *
     * @param error where they go
     * @param unit of the readings
     */
    public CurveLines(PrintStream error, String unit) {
        this.error = error;
        this.unit = unit;
        this.console = Console.isOutputTerminal() ? Console.open(KeyBindings.usual(), keys) : Optional.empty();
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Advice advice) {
            advice(advice);
        } else if (record instanceof Link link) {
            error.println("link " + link.state().code() + (link.detail().isEmpty() ? "" : ": " + link.detail()));
        } else if (record instanceof Overload overload) {
            error.println("OVERLOAD: " + overload.advice());
        }
    }

    private void advice(Advice it) {
        switch (it.topic()) {
            case CurveRecords.SET -> error.println(it.text());
            case CurveRecords.POINT -> {
                double hz = Double.parseDouble(it.text());
                error.println(
                        String.format(Locale.ROOT, "    %s kHz reads %.4g %s", CurveText.kHz(hz), it.amount(), unit));
                console.ifPresent(Console::bell);
            }
            case "check-dropped" ->
                error.println(it.text() + "; without the resting reading the decibels are doubtful");
            default -> {
                if (SAID.contains(it.topic())) {
                    error.println(it.text());
                }
            }
        }
    }

    @Override
    public void serve(SessionControl control) {
        for (Optional<KeyAction> key = keys.poll(); key.isPresent(); key = keys.poll()) {
            switch (key.get()) {
                case NEXT -> control.nextAdjuster();
                case AGAIN, PREVIOUS -> control.previousAdjuster();
                case SKIP -> control.skipAdjuster();
                case QUIT -> control.quit("quit");
                case INTERRUPT -> control.quit("interrupted");
                case HANG_UP -> control.quit("terminal closed");
                default -> {}
            }
        }
    }

    @Override
    public void close() {
        console.ifPresent(Console::close);
    }
}
