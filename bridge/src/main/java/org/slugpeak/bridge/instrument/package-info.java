/**
 * Instrument descriptions: what a user tells about a meter or a board in a TOML file, checked as a whole, with every mistake
 * named by file and line.
 */
@NullMarked
package org.slugpeak.bridge.instrument;

import org.jspecify.annotations.NullMarked;
