package org.slugpeak.core.signal;

/**
 * One line of mains hum. Immutable; any thread may use it.
 *
 * @param harmonic its number, 1 for the mains frequency itself
 * @param frequencyHz its frequency in hertz
 * @param levelFs its level in FS
 */
public record HumLine(int harmonic, double frequencyHz, double levelFs) {}
