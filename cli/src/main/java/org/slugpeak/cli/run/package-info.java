/** The loop that carries readings from a source through the analysis to whatever shows or keeps the records. */
@NullMarked
package org.slugpeak.cli.run;

import org.jspecify.annotations.NullMarked;
