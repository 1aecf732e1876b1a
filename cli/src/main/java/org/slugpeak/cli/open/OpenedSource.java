package org.slugpeak.cli.open;

import java.util.List;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.cli.run.SessionOutput;

/**
 * An open source, and whoever stands behind it and must hear the session: the simulated hand.
 *
 * @param source where readings come from
 * @param listeners get every record
 */
public record OpenedSource(ReadingSource source, List<SessionOutput> listeners) {

    /** Opens what is to take the records. */
    @FunctionalInterface
    public interface OutputsOpener {
        List<SessionOutput> open() throws BridgeException;
    }

    /** What takes the records; where it is refused, the source is let go, so that a meter gets its own keys back. */
    public List<SessionOutput> heardBy(OutputsOpener opener) throws BridgeException {
        boolean opened = false;
        try {
            List<SessionOutput> outputs = opener.open();
            opened = true;
            return outputs;
        } finally {
            if (!opened) {
                source.close();
            }
        }
    }

    /** A source behind which nobody listens. */
    static OpenedSource of(ReadingSource source) {
        return new OpenedSource(source, List.of());
    }
}
