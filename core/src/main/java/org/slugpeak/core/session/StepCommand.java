package org.slugpeak.core.session;

/**
 * Tells the analysis of a stepped session to take its last value back. It travels as the text of a mark, so that it stands in
 * the session log, and a replay that sets the same marks does the same. All methods are pure.
 */
public final class StepCommand {

    /** The text of the mark that carries it. */
    public static final String UNDO = "steps: undo";

    private StepCommand() {}

    /**
     * Whether a mark carries it.
     *
     * @param text of any mark
     * @return true for {@link #UNDO}
     */
    public static boolean isUndo(String text) {
        return text.equals(UNDO);
    }
}
