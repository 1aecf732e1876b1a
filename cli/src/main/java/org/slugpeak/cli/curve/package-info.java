/** Measures a response curve in a live session, and puts it into words. */
@NullMarked
package org.slugpeak.cli.curve;

import org.jspecify.annotations.NullMarked;
