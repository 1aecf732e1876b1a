package org.slugpeak.cli.report;

import java.util.Optional;
import org.slugpeak.core.session.Adjuster;

/**
 * One adjuster turned once. Values are as read; NaN where not known. Immutable; any thread may use it.
 *
 * @param adjuster its name
 * @param round how often it has been turned in this session, from 1
 * @param beginNanos when it was begun, from the first reading
 * @param endNanos when it was left
 * @param before level before
 * @param best best level seen
 * @param after level after
 * @param gainDb what was gained, dB
 * @param sigmaDb one sigma of the best, dB
 * @param ending done or skipped; empty where the record says neither
 */
public record Turn(
        String adjuster,
        int round,
        long beginNanos,
        long endNanos,
        double before,
        double best,
        double after,
        double gainDb,
        double sigmaDb,
        Optional<Adjuster.Action> ending) {}
