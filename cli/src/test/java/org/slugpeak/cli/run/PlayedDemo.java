package org.slugpeak.cli.run;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.sim.Demo;
import org.slugpeak.bridge.sim.DemoSettings;
import org.slugpeak.bridge.sim.Tempo;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.words.DemoNarrator;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** What {@code slugpeak demo} records, as fast as it can be played; the same each time. */
public final class PlayedDemo {

    private static final long SEED = 1;
    private static final Instant BEGUN = Instant.parse("2026-11-25T09:00:00Z");

    private PlayedDemo() {}

    /** All its records in order. */
    public static List<SessionRecord> records() throws BridgeException {
        Demo demo = Demo.create(DemoSettings.ofSeed(SEED), Tempo.unlimited(), new DemoNarrator());
        List<SessionRecord> records = new ArrayList<>();
        PeakSettings settings = PeakSettings.defaults();
        new SessionRun(
                        demo.source(),
                        settings,
                        NumberedAdjusters.toldBySource(),
                        () -> new SessionStart(1, BEGUN, "sim", demo.source().measurand(), settings, "slugpeak"),
                        List.of(new SinkOutput(demo.source().hand()), new SinkOutput(records::add)))
                .run();
        return records;
    }
}
