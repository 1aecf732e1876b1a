package org.slugpeak.cli.moment;

/**
 * What stands on the screen until it is answered: a fault that is suspected, or a peak that came out too wide. Immutable; any
 * thread may use it.
 *
 * @param text one line
 * @param isOfOnePeak whether it says nothing of the next adjuster
 */
public record Warning(String text, boolean isOfOnePeak) {}
