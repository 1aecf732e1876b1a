/** Run by the build of the archives only: manual pages, completion and pages for a browser. */
@NullMarked
package org.slugpeak.release;

import org.jspecify.annotations.NullMarked;
