/** Whether the link to an instrument is sound. */
@NullMarked
package org.slugpeak.cli.check;

import org.jspecify.annotations.NullMarked;
