/** Session records as JSON lines: {@link org.slugpeak.bridge.log.JsonLines} writes them to a stream. */
@NullMarked
package org.slugpeak.bridge.log;

import org.jspecify.annotations.NullMarked;
