/** The alignment plan: values only. */
@NullMarked
package org.slugpeak.core.plan;

import org.jspecify.annotations.NullMarked;
