/** Decimal text, as meters and files write it, turned into doubles and nanoseconds without loss. */
@NullMarked
package org.slugpeak.bridge.decimal;

import org.jspecify.annotations.NullMarked;
