/**
 * What tests of more than one module need: a clock that is set by hand, carriers that follow a script, faults on a line, and
 * a bench with a pseudo-terminal on which a meter or a converter board is plugged in, pulled out and reset.
 */
@NullMarked
package org.slugpeak.bridge.testkit;

import org.jspecify.annotations.NullMarked;
