/**
 * What a person sees: the live screen, lines for a screen reader, lines for a pipe. All three read the session records and
 * share one set of words.
 */
@NullMarked
package org.slugpeak.cli.display;

import org.jspecify.annotations.NullMarked;
