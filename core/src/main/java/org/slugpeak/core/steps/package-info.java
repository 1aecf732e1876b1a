/**
 * One settled value for each step of a turn: what somebody types who has no meter that a computer can read. No clock, no
 * dwell. The one way in is {@link org.slugpeak.core.steps.StepFinder}.
 */
@NullMarked
package org.slugpeak.core.steps;

import org.jspecify.annotations.NullMarked;
