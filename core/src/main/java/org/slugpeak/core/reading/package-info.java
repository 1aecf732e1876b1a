/** What a meter says: a number, when it was read, and whether it can be believed. */
@NullMarked
package org.slugpeak.core.reading;

import org.jspecify.annotations.NullMarked;
