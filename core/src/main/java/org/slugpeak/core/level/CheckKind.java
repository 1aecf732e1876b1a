package org.slugpeak.core.level;

import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.generator.GeneratorMove;
import org.slugpeak.core.word.Coded;

/**
 * The checks of the trade that take a few moves of the user. Each move changes one thing; the tool asks in one line, waits
 * until the reading stands, and compares. Immutable; any thread may use it.
 */
public enum CheckKind implements Coded {
    /** What the meter shows without a signal; subtracted from then on. */
    REST(true, 1),
    /** Whether the reading follows the generator. */
    LEVEL(true, 2),
    /** Whether the meter loads the point it measures. */
    LOADING(false, 1),
    /** Whether the present adjuster does anything at all. */
    EFFECT(false, 1),
    /** Whether the IF response falls as it should on both sides. */
    SKIRTS(false, 2),
    /** Whether the set is made for another intermediate frequency. */
    OTHER_IF(false, 2),
    /** Whether the generator's fundamental is what is heard. */
    HARMONIC(false, 2),
    /** Whether the oscillator is on the right side of the signal. */
    IMAGE(false, 1),
    /** What the detector makes of known steps of the generator, {@value #LAW_STEP_DB} dB each. */
    DETECTOR_LAW(false, 5);

    /** Every attenuator has it. */
    public static final double LAW_STEP_DB = 3;

    private static final double OTHER_IF_HZ = 10e3;
    private static final double HARMONIC_HZ = 2e3;

    /** Nobody takes so long for a knob. */
    private static final double PATIENCE_SECONDS = 25;

    /** Off, discharge, clip, warm up, and nobody is to hurry. */
    private static final double OFF_PATIENCE_SECONDS = 600;

    private final boolean seesStep;
    private final int moves;

    CheckKind(boolean seesStep, int moves) {
        this.seesStep = seesStep;
        this.moves = moves;
    }

    /**
     * How many moves the user is asked for, before things are put back.
     *
     * @return 1 to 5
     */
    public int moves() {
        return moves;
    }

    /** How long a move may take before the check is dropped, s. */
    double patienceSeconds() {
        return this == LOADING ? OFF_PATIENCE_SECONDS : PATIENCE_SECONDS;
    }

    /**
     * Whether the move always shows in the reading, so that nobody need say done.
     *
     * @return false where the user must say so
     */
    public boolean seesStep() {
        return seesStep;
    }

    /**
     * What a move does to the generator.
     *
     * @param move which of the moves, counted from 0; as many as there are: things are put back
     * @param skirtHz how far to either side skirts are compared, Hz
     * @return empty where the move is not one of the generator
     */
    public Optional<GeneratorMove> generatorMove(int move, double skirtHz) {
        if (move == moves) {
            return isOfGenerator() ? Optional.of(GeneratorMove.level(1)) : Optional.empty();
        }
        double side = move == 0 ? 1 : -1;
        return switch (this) {
            case REST -> Optional.of(GeneratorMove.level(0));
            case LEVEL -> Optional.of(GeneratorMove.level(Math.pow(0.5, move + 1.0)));
            case DETECTOR_LAW -> Optional.of(GeneratorMove.level(Decibels.ratio(-(move + 1) * LAW_STEP_DB)));
            case SKIRTS -> Optional.of(GeneratorMove.aside(side * skirtHz));
            case OTHER_IF -> Optional.of(GeneratorMove.aside(-side * OTHER_IF_HZ));
            case HARMONIC -> Optional.of(GeneratorMove.aside(side * HARMONIC_HZ));
            case LOADING, EFFECT, IMAGE -> Optional.empty();
        };
    }

    private boolean isOfGenerator() {
        return this != LOADING && this != EFFECT && this != IMAGE;
    }

    @Override
    public String code() {
        return Coded.of(this);
    }
}
