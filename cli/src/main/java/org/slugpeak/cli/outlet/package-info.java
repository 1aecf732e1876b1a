/** Standard output and standard error: what goes there is harmless, and what does not get there is said. */
@NullMarked
package org.slugpeak.cli.outlet;

import org.jspecify.annotations.NullMarked;
