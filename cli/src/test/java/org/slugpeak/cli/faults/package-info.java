/** The campaign of faults: what is broken on purpose, at random and again and again, by hand and not in every build. */
@NullMarked
package org.slugpeak.cli.faults;

import org.jspecify.annotations.NullMarked;
