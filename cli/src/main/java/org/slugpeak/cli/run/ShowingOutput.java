package org.slugpeak.cli.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Obvious;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.SessionRecord;
import picocli.CommandLine.TypeConversionException;

/**
 * What the user sees, and what the user's keys ask of the session. It is seen when the outputs let go of what they hold back, so
 * that a log, which comes before it, has it already. One thread.
 */
public final class ShowingOutput implements SessionOutput {

    /** So many records are not held back longer, which is a few hundred kilobytes. */
    private static final int MOST_HELD = 256;

    private final Showing showing;
    private final Set<KeyAction> useful;
    private final List<SessionRecord> held = new ArrayList<>();
    private final Map<KeyAction, Runnable> extra = new EnumMap<>(KeyAction.class);
    private final LevelKeys levelKeys = new LevelKeys();
    private final MomentKeeper keeper = new MomentKeeper();
    private int marks;

    /**
     * Shows the session.
     *
     * @param showing closed with this
     * @param useful the keys that are seen to; any other changes nothing
     */
    public ShowingOutput(Showing showing, Set<KeyAction> useful) {
        this.showing = showing;
        this.useful = Set.copyOf(useful);
        if (useful.contains(KeyAction.COUNTER)) {
            showing.keys().typeAfter(KeyAction.COUNTER);
        }
    }

    /** The keys that every session sees to. */
    public static final Set<KeyAction> USUAL_KEYS =
            Set.of(KeyAction.GO, KeyAction.MARK, KeyAction.NEXT, KeyAction.SKIP, KeyAction.KEYS, KeyAction.QUIT);

    /** The keys that a response curve sees to beside the usual ones. */
    public static final Set<KeyAction> CURVE_KEYS = Set.of(KeyAction.DONE, KeyAction.PREVIOUS);

    /** The keys that every session on a real set sees to: the level checks. */
    public static final Set<KeyAction> LEVEL_KEYS = Set.of(
            KeyAction.REST,
            KeyAction.LEVEL,
            KeyAction.CUT,
            KeyAction.CHECK,
            KeyAction.DONE,
            KeyAction.DROP,
            KeyAction.REPAIRED);

    /**
     * Sees to one more key, in the session's thread.
     *
     * @param action the key's
     * @param whatToDo is run each time
     */
    public void onKey(KeyAction action, Runnable whatToDo) {
        extra.put(action, whatToDo);
    }

    @Override
    public void take(SessionRecord record) {
        held.add(record);
        if (showing.mayAnswer()) {
            keeper.take(record); // only a key asks for the moment
        }
    }

    @Override
    public boolean isFull() {
        return held.size() >= MOST_HELD;
    }

    @Override
    public void flush() {
        held.forEach(showing::take);
        held.clear();
    }

    @Override
    public void serve(SessionControl control) {
        KeyLoop.serve(showing, control, action -> serve(action, control));
        Optional<String> entry = showing.keys().entry();
        control.counting(entry.isPresent());
        entry.ifPresent(text -> showing.echo(AskPhrase.COUNTER_SO_FAR.of(text)));
        showing.keys().pollTyped().ifPresent(text -> counted(text, control));
    }

    private void counted(String text, SessionControl control) {
        showing.echo(""); // what is said of it takes its place
        try {
            control.counted(new Frequency().convert(text.replace(',', '.')));
        } catch (TypeConversionException wrong) {
            showing.tell(String.valueOf(wrong.getMessage()));
        }
    }

    private void serve(KeyAction action, SessionControl control) {
        Runnable own = extra.get(action);
        if (own != null) {
            own.run();
        } else if (useful.contains(action)) {
            passOn(action, control);
        }
    }

    private void passOn(KeyAction action, SessionControl control) {
        switch (action) {
            case GO -> Obvious.next(keeper.moment()).ifPresent(obvious -> serve(obvious, control));
            case MARK -> control.note(AskPhrase.MARK.of(++marks));
            case NEXT -> control.nextAdjuster();
            case AGAIN -> control.sameAdjuster();
            case PREVIOUS -> control.previousAdjuster();
            case SKIP -> control.skipAdjuster();
            case REST, LEVEL, CUT, CHECK, DONE, DROP, REPAIRED ->
                control.command(new Instruction.Level(levelKeys.command(action)));
            default -> {}
        }
    }

    @Override
    public void close() {
        flush();
        showing.close();
    }
}
