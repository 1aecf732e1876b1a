package org.slugpeak.bridge.log;

/**
 * What version 1 writes as {@code advice}: every kind without a type of its own. Immutable.
 *
 * @param tNanos when
 * @param topic the kind
 * @param text one line
 * @param amount the figure that counts; NaN where there is none
 */
record AdviceLine(long tNanos, String topic, String text, double amount) {}
