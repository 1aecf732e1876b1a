/**
 * Audio samples measured: the level of the modulation tone by synchronous detection, or RMS; SINAD, distortion, hum and
 * clipping. Levels are in <b>FS</b>, linear: 1 is a sine whose peaks just reach full scale (the full-scale amplitude of
 * AES17), so that 20 log10 of a level is dB FS, and a sine has the same level as a tone, as RMS and in a band.
 *
 * <p>Start at {@link org.slugpeak.core.signal.AudioMeter}. Nothing here reads a clock, starts a thread or touches a device.
 */
@NullMarked
package org.slugpeak.core.signal;

import org.jspecify.annotations.NullMarked;
