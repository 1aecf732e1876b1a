package org.slugpeak.bridge.meter;

import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.PortUnavailable;

/** What came of the attempts to understand an instrument at several speeds. One thread at a time. */
final class Attempts {

    private final String path;
    private final List<Integer> speeds;
    private boolean unreadable;
    private Optional<String> heard = Optional.empty();
    private Optional<String> problem = Optional.empty();

    Attempts(String path, List<Integer> speeds) {
        this.path = path;
        this.speeds = speeds;
    }

    void failed(Audition audition) {
        if (audition.isUnreadable()) {
            unreadable = true;
        } else if (audition.hasHeard()) {
            heard = Optional.of(audition.description());
            problem = audition.problem().or(() -> problem);
        }
    }

    PortUnavailable explain() {
        String at = speeds.isEmpty()
                ? ""
                : " at "
                        + String.join(", ", speeds.stream().map(String::valueOf).toList()) + " baud";
        if (problem.isPresent()) {
            return new PortUnavailable(path + at + ": " + problem.get());
        }
        if (heard.isPresent()) {
            return new PortUnavailable(
                    path + at + ": " + heard.get()
                            + ", which is not understood: name the instrument with --meter, or describe it (--meter FILE.toml)");
        }
        if (unreadable) {
            return new PortUnavailable(
                    path + at + ": only bytes that are no text: give the instrument's speed with --baud");
        }
        return new PortUnavailable(
                path + at + ": nothing answers: is the instrument switched on, is the cable right, is its"
                        + " speed another (--baud)?");
    }
}
