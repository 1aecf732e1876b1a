package org.slugpeak.cli.curve;

import java.io.PrintStream;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.cli.page.SecondScreen;
import org.slugpeak.cli.run.KeyLoop;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.SessionRecord;

/**
 * Shows what to set and what was read, on a screen or in lines, rings the terminal's bell at each point, and listens to the keys:
 * r, n or Enter takes the reading, p or b the one before again, k leaves the point out, d says that what was asked is done, q ends.
 * One thread: the session's.
 */
public final class CurveOutput implements SessionOutput {

    /** The keys that are seen to. */
    public static final Set<KeyAction> KEYS = Collections.unmodifiableSet(EnumSet.of(
            KeyAction.NEXT, KeyAction.DONE, KeyAction.PREVIOUS, KeyAction.SKIP, KeyAction.KEYS, KeyAction.QUIT));

    private final Showing showing;
    private final Optional<SecondScreen> second;

    /**
     * Takes over the terminal, where there is one.
     *
     * @param error where lines go
     * @param unit of the readings
     * @param plain whether lines are wanted even on a terminal
     * @param byHand whether the user sets the generator
     * @param second shows the same; closed with this
     */
    public CurveOutput(PrintStream error, String unit, boolean plain, boolean byHand, Optional<SecondScreen> second) {
        showing = Showing.ofCurve(new CurveLines(error, unit), plain, byHand, KEYS, error);
        this.second = second;
        second.ifPresent(it -> it.join(showing));
    }

    @Override
    public void take(SessionRecord record) {
        showing.show(record);
        if (record instanceof CurveWork.PointTaken) {
            showing.bell();
        }
    }

    @Override
    public void serve(SessionControl control) {
        KeyLoop.serve(showing, control, key -> {
            switch (key) {
                case GO, NEXT -> control.nextAdjuster();
                case AGAIN, PREVIOUS -> control.previousAdjuster();
                case SKIP -> control.skipAdjuster();
                case DONE -> control.command(new Instruction.Level(LevelCommand.done()));
                default -> {}
            }
        });
    }

    @Override
    public void close() {
        try {
            showing.close();
        } finally {
            second.ifPresent(SecondScreen::close);
        }
    }
}
