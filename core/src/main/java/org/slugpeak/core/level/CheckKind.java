package org.slugpeak.core.level;

import java.util.List;
import java.util.Locale;
import org.slugpeak.core.safety.SafeHands;
import org.slugpeak.core.word.Coded;

/**
 * The checks of the trade that take one or two moves of the user. Each move changes one thing; the tool asks in one line, waits
 * until the reading stands, and compares. Immutable; any thread may use it.
 */
public enum CheckKind implements Coded {
    /** What the meter shows without a signal; subtracted from then on. */
    REST(true, "put the generator back on", "turn the generator off"),
    /** Whether the reading follows the generator. */
    LEVEL(true, "put the generator back up, times 2", "halve the generator"),
    /** Whether the meter loads the point it measures. */
    LOADING(
            false,
            SafeHands.at("take the resistor out again"),
            SafeHands.at("put 1 Mohm in series with the meter lead") + ", then say done"),
    /** Whether the present adjuster does anything at all. */
    EFFECT(false, "turn the adjuster back by half a turn", "turn the adjuster in by half a turn, then say done"),
    /** Whether the IF response falls as it should on both sides. */
    SKIRTS(
            false,
            "put the generator back on its frequency",
            "move the generator 5 kHz up, then say done",
            "now 5 kHz below its frequency, then say done"),
    /** Whether the set is made for another intermediate frequency. */
    OTHER_IF(
            false,
            "put the generator back on its frequency",
            "move the generator 10 kHz down, then say done",
            "now 10 kHz above its frequency, then say done"),
    /** Whether the generator's fundamental is what is heard. */
    HARMONIC(
            false,
            "put the generator back on its frequency",
            "move the generator 2 kHz up, then say done",
            "now 2 kHz below its frequency, then say done"),
    /** Whether the oscillator is on the right side of the signal. */
    IMAGE(
            false,
            "put the dial back",
            "set the dial lower by twice the IF (higher where the oscillator is below the signal), then say done");

    /** Nobody takes so long for a knob. */
    private static final double PATIENCE_SECONDS = 25;

    /** Off, discharge, clip, warm up, and nobody is to hurry. */
    private static final double OFF_PATIENCE_SECONDS = 600;

    private final boolean seesStep;
    private final String restore;
    // An unmodifiable copy: the checker sees only the interface.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> moves;

    CheckKind(boolean seesStep, String restore, String... moves) {
        this.seesStep = seesStep;
        this.restore = restore;
        this.moves = List.of(moves);
    }

    /**
     * What the user is asked to do, in order.
     *
     * @return one line each
     */
    public List<String> moves() {
        return moves;
    }

    /**
     * What the user is asked to do at the end.
     *
     * @return one line
     */
    public String restore() {
        return restore;
    }

    /** How long a move may take before the check is dropped, s. */
    double patienceSeconds() {
        return this == LOADING ? OFF_PATIENCE_SECONDS : PATIENCE_SECONDS;
    }

    /** Whether the move always shows in the reading, so that nobody need say done. */
    boolean seesStep() {
        return seesStep;
    }

    @Override
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
