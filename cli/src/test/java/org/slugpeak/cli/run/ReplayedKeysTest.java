package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** What the user asked for by key is in the log, and a replay gives the same records. */
final class ReplayedKeysTest {

    private static final SessionStart START = new SessionStart(
            SessionStart.CURRENT_VERSION, Instant.EPOCH, "test", Measurand.UNKNOWN, PeakSettings.defaults(), "test");

    @TempDir
    private Path folder;

    @Test
    void nextAgainSkipAndMarkAreReplayedAsTheyWere() throws BridgeException {
        Path readings = Path.of(System.getProperty("slugpeak.shared"), "recordings", "if-slug.csv");
        Path log = folder.resolve("keys.jsonl");
        List<SessionRecord> live = run(
                CsvSource.open(readings, CsvOptions.defaults()),
                NumberedAdjusters.byKey(),
                List.of(LogOutput.create(log, System.err)),
                control -> {
                    control.note("first");
                    control.note("level: check rest");
                    control.command(new Instruction.Find(Seek.DIP));
                    control.sameAdjuster();
                    control.nextAdjuster();
                    control.sameAdjuster();
                    control.skipAdjuster();
                });
        List<SessionRecord> replayed =
                run(LogSource.open(log), NumberedAdjusters.toldBySource(), List.of(), control -> {});
        assertEquals(live, replayed);
    }

    private static List<SessionRecord> run(
            ReadingSource source, Guide guide, List<SessionOutput> outputs, Consumer<SessionControl> keys)
            throws BridgeException {
        List<SessionRecord> records = new ArrayList<>();
        List<SessionOutput> all = new ArrayList<>(outputs);
        all.add(new SinkOutput(records::add));
        SessionRun session = new SessionRun(source, PeakSettings.defaults(), guide, () -> START, all);
        session.request(keys);
        session.run();
        return records;
    }
}
