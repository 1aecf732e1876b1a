/**
 * Meters that understand SCPI-1999 over IEEE 488.2 syntax: who they are, which question they answer, and what their answers
 * mean.
 */
@NullMarked
package org.slugpeak.bridge.scpi;

import org.jspecify.annotations.NullMarked;
