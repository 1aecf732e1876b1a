/** The procedure of a receiver's sheet: what to set next, when a reading counts, and what came of it. */
@NullMarked
package org.slugpeak.core.sheet;

import org.jspecify.annotations.NullMarked;
