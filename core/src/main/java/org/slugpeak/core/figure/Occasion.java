package org.slugpeak.core.figure;

import org.slugpeak.core.word.Coded;

/** When a receiver was measured. Immutable; any thread may use it. */
public enum Occasion implements Coded {
    /** Before the work. */
    BEFORE,
    /** After it. */
    AFTER;

    @Override
    public String code() {
        return Coded.of(this);
    }
}
