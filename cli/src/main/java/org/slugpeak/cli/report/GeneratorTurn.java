package org.slugpeak.cli.report;

/**
 * The generator was turned, and the readings followed. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param changeDb by how much, dB of readings
 */
record GeneratorTurn(long tNanos, double changeDb) {}
