/** Figures by which two receivers, or two years of one, are compared: what they are, and their arithmetic. */
@NullMarked
package org.slugpeak.core.figure;

import org.jspecify.annotations.NullMarked;
