package org.slugpeak.cli.report;

/**
 * Something that was said to the user. Immutable; any thread may use it.
 *
 * @param tNanos when it was first said, from the first reading
 * @param kind one word: what it is about
 * @param text what was said
 * @param times how often
 * @param lasting whether it tells of set, signal, instrument or job, and is worth looking for years later
 */
public record Notice(long tNanos, String kind, String text, int times, boolean lasting) {

    Notice again() {
        return new Notice(tNanos, kind, text, times + 1, lasting);
    }
}
