/** Benchmarks: run by hand in the Maven profile {@code bench}, never asserted. */
@NullMarked
package org.slugpeak.bridge.bench;

import org.jspecify.annotations.NullMarked;
