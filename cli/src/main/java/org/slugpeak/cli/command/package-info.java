/** One class a command: its options, and how the parts of the other rooms are put together for it. */
@NullMarked
package org.slugpeak.cli.command;

import org.jspecify.annotations.NullMarked;
