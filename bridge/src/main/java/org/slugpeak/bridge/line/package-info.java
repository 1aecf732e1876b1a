/**
 * Instruments that print lines of text: boards with an analogue-to-digital converter, hand-held meters that talk by
 * themselves or when asked by a word.
 */
@NullMarked
package org.slugpeak.bridge.line;

import org.jspecify.annotations.NullMarked;
