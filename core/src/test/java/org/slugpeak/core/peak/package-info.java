/** Tests of the peak finder. */
@NullMarked
package org.slugpeak.core.peak;

import org.jspecify.annotations.NullMarked;
