/** Numbers with units as a user types them: {@code 455}, {@code 455kHz}, {@code 10.7MHz}, {@code 50mW}. */
@NullMarked
package org.slugpeak.cli.quantity;

import org.jspecify.annotations.NullMarked;
