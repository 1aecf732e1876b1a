/** Signal generators that are described in a file: how each is set, read back, and left with its output off. */
@NullMarked
package org.slugpeak.bridge.generator;

import org.jspecify.annotations.NullMarked;
