/**
 * What all ways in have in common: {@link org.slugpeak.bridge.source.ReadingSource}, the address grammar, and the errors
 * that a user can do something about.
 */
@NullMarked
package org.slugpeak.bridge.source;

import org.jspecify.annotations.NullMarked;
