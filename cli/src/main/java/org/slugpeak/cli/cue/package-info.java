/**
 * What a person hears. Records become aims and events ({@link org.slugpeak.cli.cue.Conductor}), these become samples
 * ({@link org.slugpeak.cli.cue.Synth}, whose only clock is its frame counter), and samples go to a sound device or into a WAV
 * file.
 */
@NullMarked
package org.slugpeak.cli.cue;

import org.jspecify.annotations.NullMarked;
