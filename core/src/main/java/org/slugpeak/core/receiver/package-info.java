/**
 * The superheterodyne receiver, twice: its arithmetic (oscillator and image frequencies, spurious responses, three-point
 * tracking, image ratio, loop field, meter loading, output power) and a simulated set made of coupled resonators, a detector
 * and an AVC loop.
 */
@NullMarked
package org.slugpeak.core.receiver;

import org.jspecify.annotations.NullMarked;
