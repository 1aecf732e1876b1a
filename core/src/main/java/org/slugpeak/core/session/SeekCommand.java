package org.slugpeak.core.session;

import java.util.Optional;
import org.slugpeak.core.peak.Seek;

/**
 * Tells the analysis to seek something else from here on. It travels as the text of a mark ({@code seek: dip}), so that it
 * stands in the session log, and a replay that sets the same marks does the same. All methods are pure.
 */
public final class SeekCommand {

    private static final String PREFIX = "seek: ";

    private SeekCommand() {}

    /**
     * The text of the mark that carries the command.
     *
     * @param seek what is sought from then on
     * @return one line
     */
    public static String text(Seek seek) {
        return PREFIX + seek.code();
    }

    /**
     * Reads the text of a mark.
     *
     * @param text of any mark
     * @return what to seek; empty for an ordinary mark
     */
    public static Optional<Seek> parse(String text) {
        for (Seek seek : Seek.values()) {
            if (text.equals(text(seek))) {
                return Optional.of(seek);
            }
        }
        return Optional.empty();
    }
}
