package org.slugpeak.bridge.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.Transcript;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Measurand;

/** The real way: a pseudo-terminal, the serial library on the near end, an instrument on the far end. */
@EnabledOnOs(OS.LINUX)
class SerialBenchTest {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);

    @TempDir
    Path folder;

    private BenchPort port;
    private final Transcript heard = new Transcript();

    @BeforeEach
    void makeThePort() {
        port = BenchPort.in(folder);
    }

    @AfterEach
    void clearTheBench() {
        port.close();
    }

    @Test
    void findsAMeterByItsNameAndReadsIt() throws BridgeException {
        ScpiResponder meter =
                ScpiResponder.reading("+1.25000000E+00", "-2.5", "+9.90000000E+37", "+9.91000000E+37", "3");
        port.plug(meter);
        try (ReadingSource source = open(SerialOptions.defaults())) {
            assertEquals("EMBER FELL INSTRUMENTS BM-450, firmware 1.07", source.description());
            assertEquals(Measurand.DC_VOLTS, source.measurand());
            pollUntil(source, () -> heard.lines().size() >= 5);
        }
        assertEquals(
                List.of("1.25", "-2.5", "over-range", "no-value", "3.0"),
                heard.lines().subList(0, 5));
        meter.awaitMessage("SYSTem:LOCal");
    }

    @Test
    void meterThatAnswersOnlyOneQuestionIsHandledQuickly() throws BridgeException {
        ScpiMeter meter =
                ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-12,0,0").answering("MEASure:VOLTage:DC?", "0.5");
        port.plug(ScpiResponder.of(meter));
        try (ReadingSource source = open(SerialOptions.defaults().withMeter("generic-scpi"))) {
            pollUntil(source, () -> !heard.readings().isEmpty());
        }
        assertEquals("0.5", heard.lines().get(0));
    }

    @Test
    void findsABoardThatIsAlreadyTalking() throws BridgeException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        for (int i = 0; i < 5; i++) {
            board.print("1.5");
        }
        try (ReadingSource source = open(SerialOptions.defaults())) {
            pollUntil(source, () -> heard.readings().size() >= 4);
        }
        assertEquals(List.of("1.5", "1.5", "1.5", "1.5"), heard.lines());
    }

    @Test
    void resumesAfterThePlugWasPulled() throws BridgeException {
        ScpiResponder meter = ScpiResponder.reading("1");
        port.plug(meter);
        try (ReadingSource source = open(SerialOptions.defaults().withMeter("generic-scpi"))) {
            pollUntil(source, () -> !heard.readings().isEmpty());
            port.unplug();
            pollUntil(source, () -> heard.lines().contains("link lost"));
            port.plug(ScpiResponder.reading("2"));
            pollUntil(source, () -> heard.lines().contains("2.0"));
        }
        List<String> events =
                heard.lines().stream().filter(line -> line.startsWith("link")).toList();
        assertEquals(List.of("link lost", "link resumed"), events);
    }

    @Test
    void missingPortIsSaidInOneLine() {
        PortUnavailable said = assertThrows(PortUnavailable.class, () -> open(SerialOptions.defaults()));
        assertEquals(
                "there is no port " + port.path()
                        + ": plug the instrument in, and see 'slugpeak ports' for what is there",
                said.getMessage());
        assertTrue(said.getMessage().lines().count() == 1);
    }

    private ReadingSource open(SerialOptions options) throws BridgeException {
        return SerialSources.open(port.path(), options, Ticker.system());
    }

    private void pollUntil(ReadingSource source, BooleanSupplier done) throws BridgeException {
        long endNanos = System.nanoTime() + PATIENCE_NANOS;
        while (!done.getAsBoolean()) {
            source.poll(TimeUnit.MILLISECONDS.toNanos(50), heard);
            assertTrue(System.nanoTime() - endNanos < 0, () -> "only this came: " + heard.lines() + heard.details());
        }
    }
}
