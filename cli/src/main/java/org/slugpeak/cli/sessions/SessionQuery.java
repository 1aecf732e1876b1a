package org.slugpeak.cli.sessions;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is looked for; a session is found where all of it fits. Letters count in either case. Immutable; any thread may use it.
 *
 * @param words each somewhere in what the log says
 * @param set part of maker, model or plan
 * @param serial part of the number of the set
 * @param adjuster part of the name of one
 * @param from not begun earlier
 * @param before begun earlier
 */
public record SessionQuery(
        List<String> words,
        Optional<String> set,
        Optional<String> serial,
        Optional<String> adjuster,
        Optional<Instant> from,
        Optional<Instant> before) {

    public SessionQuery {
        words = List.copyOf(words);
    }

    /** Finds everything. */
    public static SessionQuery everything() {
        return new SessionQuery(
                List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
