/**
 * A set made up from a plan, so that any plan can be tried before it is tried on somebody's radio: which circuit each adjuster is in
 * ({@link org.slugpeak.core.rehearsal.PlannedScene}), the circuits, and the truth that the work is held against.
 */
@NullMarked
package org.slugpeak.core.rehearsal;

import org.jspecify.annotations.NullMarked;
