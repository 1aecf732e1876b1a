package org.slugpeak.cli.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.SessionRecord;

/** One owner: what was opened is closed, the outputs before the source, whatever happens. */
final class SessionRunnerTest {

    private final List<String> happened = new ArrayList<>();

    @Test
    void theOutputsAreClosedInTheirOrderAndThenTheSource() throws BridgeException {
        assertEquals(0, SessionRunner.run(parts(source -> List.of(new Named("log"), new Named("screen")))));
        assertEquals(List.of("log closed", "screen closed", "source closed"), happened);
    }

    @Test
    void whereAnOutputIsRefusedTheSourceIsLetGo() {
        SessionParts parts = parts(source -> {
            throw new BadInput("refused");
        });
        assertThrows(BadInput.class, () -> SessionRunner.run(parts));
        assertEquals(List.of("source closed"), happened);
    }

    @Test
    void anOutputThatBreaksWhenItIsClosedCostsNeitherTheOthersNorTheSource() {
        SessionOutput breaks = new Named("screen") {
            @Override
            public void close() {
                super.close();
                throw new IllegalStateException("broken");
            }
        };
        SessionParts parts = parts(source -> List.of(breaks, new Named("log")));
        assertThrows(IllegalStateException.class, () -> SessionRunner.run(parts));
        assertEquals(List.of("screen closed", "log closed", "source closed"), happened);
    }

    private SessionParts parts(SessionParts.OutputsOpening outputs) {
        return new SessionParts(
                "test",
                () -> OpenedSource.of(new Nothing()),
                outputs,
                AnalysisSettings.following(PeakSettings.defaults()),
                NumberedAdjusters.byKey());
    }

    private class Named implements SessionOutput {
        private final String name;

        Named(String name) {
            this.name = name;
        }

        @Override
        public void take(SessionRecord record) {}

        @Override
        public void close() {
            happened.add(name + " closed");
        }
    }

    private final class Nothing implements ReadingSource {
        @Override
        public Measurand measurand() {
            return Measurand.DC_VOLTS;
        }

        @Override
        public SourceDescription description() {
            return new SourceDescription.Instrument("nothing comes");
        }

        @Override
        public Progress poll(long waitNanos, SourceListener listener) {
            return Progress.ENDED;
        }

        @Override
        public void close() {
            happened.add("source closed");
        }
    }
}
