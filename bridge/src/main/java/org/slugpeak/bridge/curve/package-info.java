/** Files with the points of a response curve. */
@NullMarked
package org.slugpeak.bridge.curve;

import org.jspecify.annotations.NullMarked;
