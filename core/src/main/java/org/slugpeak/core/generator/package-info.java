/** How a signal generator is set, what its levels mean, and how it holds a reading in its window. */
@NullMarked
package org.slugpeak.core.generator;

import org.jspecify.annotations.NullMarked;
