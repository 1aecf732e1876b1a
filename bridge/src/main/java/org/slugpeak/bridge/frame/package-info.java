/**
 * Meters that send frames of a fixed length, binary or text: what their bytes and bits mean is told by a description, so that a
 * new family is one file.
 */
@NullMarked
package org.slugpeak.bridge.frame;

import org.jspecify.annotations.NullMarked;
