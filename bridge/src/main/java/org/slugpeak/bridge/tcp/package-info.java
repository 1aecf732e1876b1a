/** Instruments on the network: raw sockets that pass lines, and serial servers. */
@NullMarked
package org.slugpeak.bridge.tcp;

import org.jspecify.annotations.NullMarked;
