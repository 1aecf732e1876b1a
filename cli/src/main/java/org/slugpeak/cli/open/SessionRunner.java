package org.slugpeak.cli.open;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.cli.run.SessionRun;
import org.slugpeak.cli.run.SessionRun.AdjusterPolicy;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.SessionStart;

/** Runs a live session from its parts. */
public final class SessionRunner {

    private SessionRunner() {}

    /**
     * Runs a session until its source ends or somebody stops it.
     *
     * @param address as the user gave it
     * @param opened where readings come from
     * @param settings what to seek, and in which readings
     * @param policy who says which adjuster is at hand
     * @param outputs take every record
     * @return the exit code
     */
    public static int run(
            String address,
            OpenedSource opened,
            AnalysisSettings settings,
            AdjusterPolicy policy,
            List<SessionOutput> outputs)
            throws BridgeException {
        return run(address, opened, settings, policy, outputs, List.of());
    }

    /**
     * The same, with marks set right at the beginning.
     *
     * @param marks texts of marks, as a level command has one
     */
    public static int run(
            String address,
            OpenedSource opened,
            AnalysisSettings settings,
            AdjusterPolicy policy,
            List<SessionOutput> outputs,
            List<String> marks)
            throws BridgeException {
        SessionRun session = session(address, opened, settings, policy, outputs);
        return run(session.openedWith(marks));
    }

    /**
     * Runs a session in which somebody else than the user says which adjuster is at hand.
     *
     * @param address as the user gave it
     * @param opened where readings come from
     * @param settings what to seek at first
     * @param guide says what to do next
     * @param outputs take every record
     * @return the exit code
     */
    public static int runGuided(
            String address, OpenedSource opened, PeakSettings settings, Guide guide, List<SessionOutput> outputs)
            throws BridgeException {
        SessionRun session =
                session(address, opened, AnalysisSettings.following(settings), AdjusterPolicy.BY_GUIDE, outputs);
        return run(session.guidedBy(guide));
    }

    private static SessionRun session(
            String address,
            OpenedSource opened,
            AnalysisSettings settings,
            AdjusterPolicy policy,
            List<SessionOutput> outputs) {
        ReadingSource source = opened.source();
        Instant startedAt = InstantSource.system().instant();
        List<SessionOutput> all = new ArrayList<>(outputs);
        all.addAll(opened.listeners());
        return new SessionRun(
                source,
                settings.peak(),
                policy,
                () -> new SessionStart(
                        SessionStart.CURRENT_VERSION,
                        startedAt,
                        address,
                        source.measurand(),
                        settings.peak(),
                        Version.tool(),
                        settings.stepped()),
                all);
    }

    /**
     * Runs a session.
     *
     * @param session not yet run
     * @return the exit code
     */
    public static int run(SessionRun session) throws BridgeException {
        boolean interrupted = Interruption.run(session);
        if (!session.isWhole()) {
            return 1;
        }
        return interrupted ? Interruption.EXIT_CODE : 0;
    }
}
