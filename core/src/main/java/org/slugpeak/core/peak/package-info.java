/**
 * The streaming peak finder. Its one entry point is {@link org.slugpeak.core.peak.PeakFinder}; what it finds goes to a
 * {@link org.slugpeak.core.peak.PeakListener}.
 */
@NullMarked
package org.slugpeak.core.peak;

import org.jspecify.annotations.NullMarked;
