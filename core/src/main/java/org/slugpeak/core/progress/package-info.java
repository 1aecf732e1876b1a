/** The progress through an alignment plan: its order and rounds, and what has to be done next. */
@NullMarked
package org.slugpeak.core.progress;

import org.jspecify.annotations.NullMarked;
