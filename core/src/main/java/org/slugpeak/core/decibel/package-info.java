/** Ratios of levels as decibels, and back. */
@NullMarked
package org.slugpeak.core.decibel;

import org.jspecify.annotations.NullMarked;
