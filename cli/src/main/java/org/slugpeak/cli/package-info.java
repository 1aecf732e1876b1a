/** Commands: one class each, wiring only. */
@NullMarked
package org.slugpeak.cli;

import org.jspecify.annotations.NullMarked;
