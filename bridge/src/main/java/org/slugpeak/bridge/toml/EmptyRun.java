package org.slugpeak.bridge.toml;

import java.util.List;
import java.util.OptionalInt;

/**
 * Lines one after the other that say nothing: blank ones and remarks. The parser (tomlj 2.2.0) looks from each of them to the end of
 * their run again and again: 300 cost it half a second, 1000 ten seconds, 2000 most of a minute.
 */
final class EmptyRun {

    /** The templates, which are mostly remarks, have no run of 80. */
    static final int LONGEST = 300;

    private EmptyRun() {}

    /** The line by which a run is too long; empty where none is. */
    static OptionalInt lineTooFar(String text) {
        List<String> lines = text.lines().toList();
        int run = 0;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            run = line.isEmpty() || line.startsWith("#") ? run + 1 : 0;
            if (run > LONGEST) {
                return OptionalInt.of(i + 1);
            }
        }
        return OptionalInt.empty();
    }
}
