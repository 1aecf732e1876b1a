/**
 * Keeping the level right: overload, flattening, resting voltage, generator prompts, drift, weak signal, and the faults that
 * readings give away. Its one entry point is {@link org.slugpeak.core.level.LevelWatch}.
 */
@NullMarked
package org.slugpeak.core.level;

import org.jspecify.annotations.NullMarked;
