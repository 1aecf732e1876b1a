package org.slugpeak.cli.report;

import java.util.Optional;
import org.slugpeak.core.session.Adjuster;

/**
 * One adjuster turned once. Levels are on the scale of {@link ConstantGenerator}, from what was found there; NaN where not known. Immutable; any thread may use it.
 *
 * @param adjuster its name
 * @param round how often it has been turned in this session, from 1
 * @param beginNanos when it was begun, from the first reading
 * @param endNanos when it was left
 * @param inUnit whether levels are in the unit of the readings, as around a zero, rather than in dB
 * @param before level before
 * @param best best level seen
 * @param after level after
 * @param generatorDb the generator in the end, above where it stood when this scale began, dB
 * @param gainDb what was gained, dB; NaN around a zero
 * @param sigmaDb one sigma of the best, dB
 * @param limits of both levels
 * @param ending done or skipped; empty where the record says neither
 */
public record Turn(
        String adjuster,
        int round,
        long beginNanos,
        long endNanos,
        boolean inUnit,
        double before,
        double best,
        double after,
        double generatorDb,
        double gainDb,
        double sigmaDb,
        TurnLimits limits,
        Optional<Adjuster.Action> ending) {}
