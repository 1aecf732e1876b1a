/** The safety questions, asked before hands go near a set. */
@NullMarked
package org.slugpeak.cli.safety;

import org.jspecify.annotations.NullMarked;
