/** Carries an alignment plan out in a live session. */
@NullMarked
package org.slugpeak.cli.align;

import org.jspecify.annotations.NullMarked;
