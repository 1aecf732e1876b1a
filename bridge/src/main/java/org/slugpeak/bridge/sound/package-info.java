/**
 * Audio as a meter: the sound input of the computer ({@code sound}, {@code sound:NAME}) and WAV files, through one path of
 * bytes, samples and {@link org.slugpeak.core.signal.AudioMeter}. Start at {@link org.slugpeak.bridge.sound.SoundSources}.
 *
 * <p>{@code javax.sound} is loaded only when a sound input is opened or listed, never for a file.
 */
@NullMarked
package org.slugpeak.bridge.sound;

import org.jspecify.annotations.NullMarked;
