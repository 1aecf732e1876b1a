package org.slugpeak.core.receiver;

/**
 * What a hand and its tool do to the circuit that they are at. Immutable; any thread may use it.
 *
 * @param inductanceFraction added to the coil in a closed can, as a fraction of it; 0 or more
 * @param farad added across a circuit that stands open, as the oscillator's and the aerial's do; 0 or more
 */
public record HandEffect(double inductanceFraction, double farad) {}
