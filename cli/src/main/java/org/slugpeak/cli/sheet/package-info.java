/** A receiver's sheet carried out in a session. */
@NullMarked
package org.slugpeak.cli.sheet;

import org.jspecify.annotations.NullMarked;
