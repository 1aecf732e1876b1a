/** Corrects the dial of a generator or receiver from known points, and says how well. */
@NullMarked
package org.slugpeak.core.scale;

import org.jspecify.annotations.NullMarked;
