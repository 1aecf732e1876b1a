/**
 * The receiver as arithmetic: coupled circuits, detector, gain control, oscillator tracking; and a simulated receiver made
 * of them. Nothing here knows of readings, sessions or instruments.
 */
@NullMarked
package org.slugpeak.core.receiver;

import org.jspecify.annotations.NullMarked;
