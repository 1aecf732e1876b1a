/** A session whose generator is set by the tool: who wishes what of it, and who leaves it with its output off. */
@NullMarked
package org.slugpeak.cli.feed;

import org.jspecify.annotations.NullMarked;
