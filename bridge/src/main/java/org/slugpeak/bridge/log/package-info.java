/**
 * Session records as JSON lines: {@link org.slugpeak.bridge.log.JsonLines} writes them to a stream,
 * {@link org.slugpeak.bridge.log.SessionLog} to a file that survives a crash, {@link org.slugpeak.bridge.log.LogReader}
 * describes the format and reads it back, and {@link org.slugpeak.bridge.log.LogSource} plays it again.
 */
@NullMarked
package org.slugpeak.bridge.log;

import org.jspecify.annotations.NullMarked;
