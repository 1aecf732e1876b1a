package org.slugpeak.bridge.toml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.text.Listing;
import org.tomlj.TomlPosition;

/** The mistakes found in one file. One thread at a time. */
final class Problems {

    private record Problem(int line, String text) {}

    private final String file;
    private final String kind;
    private final List<Problem> found = new ArrayList<>();

    Problems(String file, String kind) {
        this.file = file;
        this.kind = kind;
    }

    void add(TomlPosition position, String text) {
        found.add(new Problem(position.line(), text));
    }

    void add(int line, String text) {
        found.add(new Problem(line, text));
    }

    /** What the file is: a plan, a description. */
    String kind() {
        return kind;
    }

    void throwIfAny() throws BadConfiguration {
        if (!found.isEmpty()) {
            List<String> lines = found.stream()
                    .sorted(Comparator.comparingInt(Problem::line))
                    .map(each -> file + ":" + each.line() + ": " + each.text())
                    .toList();
            throw new BadConfiguration(Listing.of(lines, "\n"));
        }
    }
}
