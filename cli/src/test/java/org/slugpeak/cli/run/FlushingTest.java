package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.cli.display.DisplayOptions;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** Nothing that was read is held back while the session waits for the next reading. */
final class FlushingTest {

    private static final int READINGS = 20;

    private int taken;
    private int flushed;

    @Test
    void everythingIsLetGoBeforeTheSourceIsWaitedFor() throws BridgeException {
        session(List.of(new Holding())).run();
        assertEquals(taken, flushed);
    }

    private SessionRun session(List<SessionOutput> outputs) {
        return new SessionRun(
                new OneByOne(),
                PeakSettings.defaults(),
                NumberedAdjusters.byKey(),
                () -> new SessionStart(
                        SessionStart.CURRENT_VERSION,
                        Instant.EPOCH,
                        "test",
                        Measurand.DC_VOLTS,
                        PeakSettings.defaults(),
                        "test"),
                outputs);
    }

    @Test
    void whatOneOutputCannotHoldBackAnyLongerTheOthersLetGoOfBeforeIt() throws BridgeException {
        List<String> letGo = new ArrayList<>();
        SessionOutput log = new SessionOutput() {
            @Override
            public void take(SessionRecord record) {}

            @Override
            public void flush() {
                letGo.add("log");
            }
        };
        SessionOutput full = new SessionOutput() {
            @Override
            public void take(SessionRecord record) {
                letGo.add("taken");
            }

            @Override
            public boolean isFull() {
                return true;
            }

            @Override
            public void flush() {
                letGo.add("shown");
            }
        };
        session(List.of(log, full)).run();
        assertEquals(List.of("taken", "log", "shown"), letGo.subList(0, 3));
    }

    @Test
    void whatIsShownIsInTheLogAlready() throws BridgeException {
        List<String> done = new ArrayList<>();
        SessionOutput log = new SessionOutput() {
            @Override
            public void take(SessionRecord record) {}

            @Override
            public void flush() {
                done.add("kept");
            }
        };
        Showing nothing = new DisplayOptions().open(System.err, System.err, true, Set.of());
        nothing.alsoTo(record -> done.add("shown"));
        session(List.of(log, new ShowingOutput(nothing, Set.of()))).run();
        int firstShown = done.indexOf("shown");
        assertTrue(firstShown > 0 && done.get(firstShown - 1).equals("kept"), done.toString());
        assertTrue(Collections.frequency(done, "shown") > READINGS, "all is shown in the end");
    }

    private final class Holding implements SessionOutput {
        @Override
        public void take(SessionRecord record) {
            taken++;
        }

        @Override
        public void flush() {
            flushed = taken;
        }
    }

    /** A board that sends one reading at a time: each pass that may wait brings one, and says that more may be ready. */
    private final class OneByOne implements ReadingSource {

        private int delivered;

        @Override
        public Measurand measurand() {
            return Measurand.DC_VOLTS;
        }

        @Override
        public SourceDescription description() {
            return new SourceDescription.Instrument("one by one");
        }

        @Override
        public Progress poll(long waitNanos, SourceListener listener) {
            if (delivered == READINGS) {
                return Progress.ENDED;
            }
            if (waitNanos == 0) {
                return Progress.IDLE;
            }
            assertEquals(taken, flushed, "records are held back while the session waits");
            listener.reading(Reading.of(delivered * 20_000_000L, 0.5));
            delivered++;
            return Progress.MORE;
        }

        @Override
        public void close() {}
    }
}
