/** A simulated hand that turns a simulated slug by the finder's verdicts alone, and what came of it. */
@NullMarked
package org.slugpeak.core.peak.bench;

import org.jspecify.annotations.NullMarked;
