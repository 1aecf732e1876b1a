/** Tests of readings that come a step at a time. */
@NullMarked
package org.slugpeak.core.steps;

import org.jspecify.annotations.NullMarked;
