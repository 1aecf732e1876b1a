/**
 * Reads alignment plans. A plan is a TOML file that a user can write by hand; {@code shared/plans/template.toml} explains
 * every key.
 */
@NullMarked
package org.slugpeak.bridge.plan;

import org.jspecify.annotations.NullMarked;
