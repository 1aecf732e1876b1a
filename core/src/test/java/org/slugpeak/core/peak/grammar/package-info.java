/** Streams of readings drawn from a grammar: a list of pieces, each a level that does one thing, read by one meter, over one transport. */
@NullMarked
package org.slugpeak.core.peak.grammar;

import org.jspecify.annotations.NullMarked;
