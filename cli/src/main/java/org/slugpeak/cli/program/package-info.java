/** The program on this machine: its version, its folder of state, its log of what happens behind the scenes. */
@NullMarked
package org.slugpeak.cli.program;

import org.jspecify.annotations.NullMarked;
