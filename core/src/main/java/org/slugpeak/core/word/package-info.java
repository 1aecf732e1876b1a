/** Words and numbers that come from outside, from a person or a file, and what is said where they cannot be. */
@NullMarked
package org.slugpeak.core.word;

import org.jspecify.annotations.NullMarked;
