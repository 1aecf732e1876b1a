/** Files that users write by hand: every mistake is found in one go, with its line and what was expected. */
@NullMarked
package org.slugpeak.bridge.toml;

import org.jspecify.annotations.NullMarked;
