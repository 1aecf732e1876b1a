/** Keeps the known points of a dial in a small text file. */
@NullMarked
package org.slugpeak.bridge.scale;

import org.jspecify.annotations.NullMarked;
