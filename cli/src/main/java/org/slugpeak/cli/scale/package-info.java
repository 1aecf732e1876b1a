/** Dial points of a receiver, kept in a session log. */
@NullMarked
package org.slugpeak.cli.scale;

import org.jspecify.annotations.NullMarked;
