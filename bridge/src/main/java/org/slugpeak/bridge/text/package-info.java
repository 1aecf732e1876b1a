/** Text that came from outside, made fit to be shown. */
@NullMarked
package org.slugpeak.bridge.text;

import org.jspecify.annotations.NullMarked;
