/**
 * The second screen: one page that this computer serves to a browser, on the phone beside the chassis or on this machine. It tells the moment
 * that the terminal tells; whoever does not know its address gets nothing.
 */
@NullMarked
package org.slugpeak.cli.page;

import org.jspecify.annotations.NullMarked;
