package org.slugpeak.cli.open;

import java.util.List;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.cli.run.SessionOutput;

/**
 * An open source, and whoever stands behind it and must hear the session: the simulated hand.
 *
 * @param source where readings come from
 * @param listeners get every record
 */
public record OpenedSource(ReadingSource source, List<SessionOutput> listeners) {

    /** A source behind which nobody listens. */
    public static OpenedSource of(ReadingSource source) {
        return new OpenedSource(source, List.of());
    }
}
