/** Opens what a session reads from and writes to, owns both until it is over, and closes them in the right order. */
@NullMarked
package org.slugpeak.cli.open;

import org.jspecify.annotations.NullMarked;
