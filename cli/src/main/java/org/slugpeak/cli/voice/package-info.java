/** What is spoken of a session, by whichever voice the system has: it tells the moment, as every display does. */
@NullMarked
package org.slugpeak.cli.voice;

import org.jspecify.annotations.NullMarked;
