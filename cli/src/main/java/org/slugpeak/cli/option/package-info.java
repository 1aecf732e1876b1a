/** Groups of options that commands share, and what they say. */
@NullMarked
package org.slugpeak.cli.option;

import org.jspecify.annotations.NullMarked;
