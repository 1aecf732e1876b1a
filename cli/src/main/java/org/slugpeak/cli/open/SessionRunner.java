package org.slugpeak.cli.open;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.cli.run.SessionRun;
import org.slugpeak.core.session.SessionStart;

/**
 * The one owner of a session: opens the source, then the outputs, runs the session, and closes the outputs before the source.
 * Where an output is refused the source is let go at once, so that a meter gets its own keys back.
 */
public final class SessionRunner {

    private SessionRunner() {}

    /**
     * Runs a session until its source ends or somebody stops it.
     *
     * @param parts not yet open
     * @return the exit code
     * @throws BridgeException where a part cannot be opened, or the source fails for good; all is closed then
     */
    public static int run(SessionParts parts) throws BridgeException {
        OpenedSource opened = parts.source().open();
        return run(opened.source(), () -> session(parts, opened));
    }

    private static SessionRun session(SessionParts parts, OpenedSource opened) throws BridgeException {
        ReadingSource source = opened.source();
        Instant startedAt = InstantSource.system().instant();
        List<SessionOutput> outputs = new ArrayList<>(parts.outputs().open(opened));
        outputs.addAll(opened.listeners());
        SessionRun session = new SessionRun(
                source,
                parts.settings().peak(),
                parts.guide(),
                () -> new SessionStart(
                        SessionStart.CURRENT_VERSION,
                        startedAt,
                        parts.address(),
                        source.measurand(),
                        parts.settings().peak(),
                        Version.tool(),
                        parts.settings().stepped()),
                outputs);
        return session.openedWith(parts.opening());
    }

    /**
     * Goes through a recorded session, which begins as it began.
     *
     * @param log of the session
     * @param outputs open what takes every record
     * @return the exit code
     * @throws BridgeException where a part cannot be opened, or the log cannot be read on; all is closed then
     */
    public static int replay(Path log, SessionParts.OutputsOpening outputs) throws BridgeException {
        LogSource source = LogSource.open(log);
        SessionStart start = source.start();
        return run(
                source,
                () -> new SessionRun(
                        source,
                        start.settings(),
                        new RecordedGuide(),
                        () -> start,
                        outputs.open(OpenedSource.of(source))));
    }

    @FunctionalInterface
    private interface SessionMaker {
        SessionRun make() throws BridgeException;
    }

    private static int run(ReadingSource source, SessionMaker maker) throws BridgeException {
        boolean made = false;
        SessionRun session;
        try {
            session = maker.make();
            made = true;
        } finally {
            if (!made) {
                source.close();
            }
        }
        boolean interrupted = Interruption.run(session);
        if (!session.isWhole()) {
            return 1;
        }
        return interrupted ? Interruption.EXIT_CODE : 0;
    }
}
