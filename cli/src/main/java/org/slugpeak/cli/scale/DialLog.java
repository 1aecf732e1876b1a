package org.slugpeak.cli.scale;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.slugpeak.bridge.log.SessionLog;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.Work;

/** Keeps the dial errors of a receiver in a session log without readings. All methods are stateless. */
public final class DialLog {

    private DialLog() {}

    /**
     * Writes them.
     *
     * @param file must not be there yet
     * @param points of the dial
     * @param after whether they were taken after the work
     * @param error for a line when the disk is full
     * @return whether all of it is in the file
     */
    public static boolean write(Path file, List<KnownPoint> points, boolean after, PrintWriter error) throws BadLog {
        SessionLog kept;
        try (SessionLog log = SessionLog.create(
                file, new RecordSentences(), warning -> error.println("slugpeak scale: " + warning))) {
            kept = log;
            Analysis session = new Analysis(PeakSettings.defaults(), log);
            session.start(new SessionStart(
                    SessionStart.CURRENT_VERSION,
                    InstantSource.system().instant(),
                    "receiver dial",
                    new Measurand("dial error", "Hz"),
                    PeakSettings.defaults(),
                    Version.tool()));
            for (KnownPoint point : points) {
                session.tell(at -> new Work.DialNoted(at, point.trueHz(), point.dialErrorHz(), after));
            }
            session.end(EndReason.Known.DONE);
        }
        return kept.isWhole();
    }
}
