/**
 * The simulated bench: a receiver, a meter in front of it and a hand that obeys the records. Its one way in for the rest of
 * the program is {@link org.slugpeak.bridge.sim.SimSource}.
 */
@NullMarked
package org.slugpeak.bridge.sim;

import org.jspecify.annotations.NullMarked;
