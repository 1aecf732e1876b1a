/** The one seam through which elapsed time enters the bridge. */
@NullMarked
package org.slugpeak.bridge.time;

import org.jspecify.annotations.NullMarked;
