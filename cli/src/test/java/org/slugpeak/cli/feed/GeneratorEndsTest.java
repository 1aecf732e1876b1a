package org.slugpeak.cli.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortLost;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.cli.open.OpenedSource;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.SessionRecord;
import picocli.CommandLine;

/** However a session ends, and wherever something in it fails, the generator's output is off then. Signals: .ci/checks/generator.sh. */
class GeneratorEndsTest {

    private final SimulatedGenerator simulated = new SimulatedGenerator(0, 1);
    private final ScpiResponder responder = ScpiResponder.of(simulated.scpi());
    private final TcpBench bench = TcpBench.of(responder);
    private final StringWriter said = new StringWriter();

    @AfterEach
    void outputIsOffAndTheLineIsFree() {
        bench.close();
        assertTrue(responder.messages().contains("OUTPut ON"), "it was never on");
        assertFalse(simulated.radiates().on());
        assertEquals("", said.toString());
        List<String> all = responder.messages();
        assertEquals("SYSTem:LOCal", all.get(all.size() - 1));
    }

    /** What happens in the session's thread once there is a signal. */
    @FunctionalInterface
    private interface Happening {
        ReadingSource.Progress happen(SourceListener listener) throws BridgeException;
    }

    private final class Source implements ReadingSource {

        private final Happening once;
        private boolean begun;

        Source(Happening onceOn) {
            this.once = onceOn;
        }

        @Override
        public Measurand measurand() {
            return Measurand.DC_VOLTS;
        }

        @Override
        public SourceDescription description() {
            return new SourceDescription.Instrument("test");
        }

        @Override
        public Progress poll(long waitNanos, SourceListener listener) throws BridgeException {
            if (!begun) {
                begun = true;
                listener.reading(Reading.of(0, 1));
            }
            return simulated.radiates().on() && responder.messages().contains("OUTPut ON")
                    ? once.happen(listener)
                    : Progress.IDLE;
        }

        @Override
        public void close() {}
    }

    /** Ends the session, or fails, once there is a signal; a source that says nothing more is polled on. */
    private final class Leader implements Guide {

        private final Runnable failing;
        private final boolean quits;

        Leader(Runnable failing, boolean quits) {
            this.failing = failing;
            this.quits = quits;
        }

        @Override
        public void begin(Analysis analysis) {}

        @Override
        public void lead(Analysis analysis, SessionControl control) {
            if (simulated.radiates().on() && responder.messages().contains("OUTPut ON")) {
                failing.run();
                if (quits) {
                    control.quit(EndReason.Known.QUIT);
                }
            }
        }

        @Override
        public void take(SessionRecord record) {}

        @Override
        public void next(Analysis analysis) {}

        @Override
        public void skip(Analysis analysis) {}
    }

    private GeneratorSession session() {
        GeneratorOptions options = new GeneratorOptions();
        new CommandLine(new Holder(options)).parseArgs("--generator", "tcp:127.0.0.1:" + bench.port());
        GeneratorSession session = new GeneratorSession(options, OptionalDouble.empty(), reach -> {});
        session.tune(455e3);
        return session;
    }

    private int run(Happening source, Runnable failing, boolean quits) throws BridgeException {
        return run(session(), source, failing, quits);
    }

    private int run(GeneratorSession session, Happening source, Runnable failing, boolean quits)
            throws BridgeException {
        return session.run(
                new SessionParts(
                        "test",
                        () -> OpenedSource.of(new Source(source)),
                        opened -> List.of(),
                        AnalysisSettings.following(PeakSettings.defaults()),
                        new Leader(failing, quits)),
                new PrintWriter(said, true));
    }

    /** For picocli. */
    @CommandLine.Command
    private static final class Holder {

        /** Picocli alone looks at it. */
        @SuppressWarnings("UnusedVariable")
        @CommandLine.Mixin
        private final GeneratorOptions options;

        Holder(GeneratorOptions options) {
            this.options = options;
        }
    }

    @Test
    void theReadingsEnd() throws BridgeException {
        assertEquals(0, run(listener -> ReadingSource.Progress.ENDED, () -> {}, false));
    }

    @Test
    void somebodyQuitsOrThePlanIsThrough() throws BridgeException {
        assertEquals(0, run(listener -> ReadingSource.Progress.IDLE, () -> {}, true));
    }

    @Test
    void theMeterIsLostForGood() {
        assertThrows(
                PortLost.class,
                () -> run(
                        listener -> {
                            throw new PortLost("the meter has gone");
                        },
                        () -> {},
                        false));
    }

    @Test
    void somethingInsideFails() {
        assertThrows(
                IllegalStateException.class,
                () -> run(
                        listener -> ReadingSource.Progress.IDLE,
                        () -> {
                            throw new IllegalStateException("a fault of the program");
                        },
                        false));
    }

    @Test
    void theGeneratorRefusesWhatIsWantedLater() {
        GeneratorSession session = session();
        BadConfiguration refused = assertThrows(
                BadConfiguration.class,
                () -> run(
                        session,
                        listener -> {
                            session.tune(98e6);
                            return ReadingSource.Progress.IDLE;
                        },
                        () -> {},
                        false));
        assertTrue(String.valueOf(refused.getMessage()).contains("98000000"), refused.getMessage());
    }
}
