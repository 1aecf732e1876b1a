/** Instruments on USB that Linux shows as {@code /dev/usbtmc0}: one message a read, no port settings. */
@NullMarked
package org.slugpeak.bridge.usbtmc;

import org.jspecify.annotations.NullMarked;
