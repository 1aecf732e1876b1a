package org.slugpeak.core.peak.grammar;

import net.jqwik.api.FixedSeedMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/** Says which streams a {@link Law} is tried on. */
final class Draw implements AroundPropertyHook {

    /** All laws together take a few seconds. */
    private static final int TRIES = 100;

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        attributes.setSeed(System.getProperty("laws.seed", Long.toString(Trace.SEED)));
        attributes.setWhenFixedSeed(FixedSeedMode.ALLOW);
        attributes.setTries(Integer.getInteger("laws.tries", TRIES));
        return property.execute();
    }
}
