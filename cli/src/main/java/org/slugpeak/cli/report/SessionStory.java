package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.core.session.Gains;
import org.slugpeak.core.session.SessionStart;

/**
 * All that a report tells of one session. Immutable; any thread may use it.
 *
 * @param name of the log
 * @param start its first record
 * @param ending how it ended, one line
 * @param plan name of the plan; empty where there was none
 * @param facts what was noted of set, job and workshop
 * @param warnings what was warned of and is not put right
 * @param safety safety questions with their answers
 * @param levels what is told of the readings
 * @param generator every turn of it that the readings followed
 * @param turns every adjuster turned, in order
 * @param gains what they gained in all
 * @param notices what was said to the user
 * @param curve response curve, ascending in frequency
 * @param dials dial errors
 * @param sheets receivers' sheets, before or after the work
 */
public record SessionStory(
        String name,
        SessionStart start,
        String ending,
        String plan,
        Facts facts,
        List<String> warnings,
        List<String> safety,
        Levels levels,
        List<GeneratorTurn> generator,
        List<Turn> turns,
        Gains gains,
        List<Notice> notices,
        List<CurvePoint> curve,
        List<DialError> dials,
        List<SheetStory> sheets) {

    public SessionStory {
        warnings = List.copyOf(warnings);
        safety = List.copyOf(safety);
        generator = List.copyOf(generator);
        turns = List.copyOf(turns);
        notices = List.copyOf(notices);
        curve = List.copyOf(curve);
        dials = List.copyOf(dials);
        sheets = List.copyOf(sheets);
    }

    /**
     * How long it lasted.
     *
     * @return nanoseconds, 0 without readings
     */
    public long lengthNanos() {
        return levels.lastNanos();
    }
}
