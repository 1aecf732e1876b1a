/** Words that keep hands alive: nothing in a set is touched while it is on. */
@NullMarked
package org.slugpeak.core.safety;

import org.jspecify.annotations.NullMarked;
