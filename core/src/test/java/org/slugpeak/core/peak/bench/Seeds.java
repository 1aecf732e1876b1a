package org.slugpeak.core.peak.bench;

import java.util.Locale;

/** Which seeds a run begins at. */
enum Seeds {
    /** To choose by. */
    DEVELOPMENT(40_000_000),
    /** To judge by; nothing is ever chosen on them. */
    JUDGING(60_000_000);

    private final long first;

    Seeds(long first) {
        this.first = first;
    }

    long first() {
        return first;
    }

    static Seeds ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
