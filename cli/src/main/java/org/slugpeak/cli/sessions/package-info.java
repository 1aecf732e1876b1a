/** What was kept: an index of session logs that can be deleted at any time, since the logs are the truth. */
@NullMarked
package org.slugpeak.cli.sessions;

import org.jspecify.annotations.NullMarked;
