/**
 * The session records: the one vocabulary of log, JSON stream, display, sound, replay and report; and
 * {@link org.slugpeak.core.session.Analysis}, which turns readings into them.
 */
@NullMarked
package org.slugpeak.core.session;

import org.jspecify.annotations.NullMarked;
