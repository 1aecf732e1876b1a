/** Response against generator frequency: widths, skirts, humps, and the coupled circuits that fit it. */
@NullMarked
package org.slugpeak.core.curve;

import org.jspecify.annotations.NullMarked;
