/** Opens instruments: finds the kind of line, and finds out what speaks at its other end. */
@NullMarked
package org.slugpeak.bridge.meter;

import org.jspecify.annotations.NullMarked;
