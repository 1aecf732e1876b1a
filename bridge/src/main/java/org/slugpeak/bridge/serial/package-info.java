/**
 * Serial ports: which there are, how they are opened, and what happens when a plug is pulled. One class knows the library
 * that does it.
 */
@NullMarked
package org.slugpeak.bridge.serial;

import org.jspecify.annotations.NullMarked;
