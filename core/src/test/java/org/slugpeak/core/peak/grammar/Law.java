package org.slugpeak.core.peak.grammar;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/**
 * Holds for every stream. The streams are the same in every build; {@code -Dlaws.seed=N} draws others, {@code -Dlaws.tries=N} draws
 * more or fewer.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Property(edgeCases = EdgeCasesMode.NONE)
@AddLifecycleHook(Draw.class)
public @interface Law {}
