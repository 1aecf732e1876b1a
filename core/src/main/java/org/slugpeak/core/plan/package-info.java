/** The alignment plan, its order and rounds, and the progress through it. */
@NullMarked
package org.slugpeak.core.plan;

import org.jspecify.annotations.NullMarked;
