package org.slugpeak.core.steps;

import java.util.function.Consumer;

/** Lets a finding be told, unless it was told before. */
@FunctionalInterface
interface Teller {

    /**
     * Tells.
     *
     * @param finding the call of the listener's method
     */
    void tell(Consumer<StepListener> finding);
}
