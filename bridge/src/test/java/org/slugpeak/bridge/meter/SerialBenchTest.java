package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
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
import org.slugpeak.bridge.serial.PortInfo;
import org.slugpeak.bridge.serial.SerialPorts;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.FaultyLine;
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
    private static final String START =
            "S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F";
    private static final String DATA = "D 1.5 820 -*EE24";

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
        try (ReadingSource source = open(InstrumentOptions.defaults())) {
            assertEquals(
                    new SourceDescription.Instrument("EMBER FELL INSTRUMENTS BM-450, firmware 1.07"),
                    source.description());
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
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("generic-scpi"))) {
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
        try (ReadingSource source = open(InstrumentOptions.defaults())) {
            pollUntil(source, () -> heard.readings().size() >= 4);
        }
        assertEquals(List.of("1.5", "1.5", "1.5", "1.5"), heard.lines());
    }

    @Test
    void resumesAfterThePlugWasPulled() throws BridgeException {
        ScpiResponder meter = ScpiResponder.reading("1");
        port.plug(meter);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("generic-scpi"))) {
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
    void aBoardThatStartsAnewWhenThePortOpensIsReadFromItsStartLine() throws BridgeException {
        LineAdc board = LineAdc.resetOnOpen("\u0000\u0080boot", START, DATA, DATA);
        port.plug(board);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("slugpeak-adc"))) {
            assertEquals(new SourceDescription.Instrument("bench-meter"), source.description());
            pollUntil(source, () -> heard.readings().size() >= 2);
        }
        assertEquals(0.41, heard.readings().get(0).value(), 1e-12);
        assertTrue(heard.lines().contains("garbled unreadable"));
    }

    @Test
    void aBoardThatIsResetWhileItIsReadIsToldFromAFaultOfTheLine() throws BridgeException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("value-and-time"))) {
            board.awaitOpened();
            board.print("");
            board.print("60000,1.5");
            pollUntil(source, () -> heard.lines().contains("1.5"));
            board.print("30,1.6");
            pollUntil(source, () -> heard.lines().contains("1.6"));
        }
        assertEquals(List.of("1.5", "notice restarted", "1.6"), heard.lines());
    }

    @Test
    void garbageAndHalfLinesAreCountedAndTheReadingsBetweenAreRight() throws BridgeException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("value-and-time"))) {
            board.awaitOpened();
            board.print("");
            board.print("10,1.5");
            board.send(new byte[] {0, (byte) 0xFE, (byte) 0x80, '\n'});
            board.print("half of the line behind is lost");
            board.print("30");
            board.print("50,1.6");
            pollUntil(source, () -> heard.lines().contains("1.6"));
        }
        assertEquals(List.of("1.5", "garbled unreadable", "garbled torn", "1.6"), heard.lines());
    }

    @Test
    void aMeterThatHoldsItsAnswersBackIsStaleAndResumes() throws BridgeException {
        ScpiResponder meter = ScpiResponder.reading("1");
        port.plug(meter);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("generic-scpi"))) {
            pollUntil(source, () -> heard.readings().size() >= 5);
            meter.hold();
            pollUntil(source, () -> heard.lines().contains("link stale"));
            meter.letGo();
            pollUntil(source, () -> heard.lines().contains("link resumed"));
        }
        assertTrue(heard.lines().stream().noneMatch("link lost"::equals));
    }

    @Test
    void aBoardThatComesBackWithItsClockAtZeroGoesOnWithoutGoingBackInTime() throws BridgeException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("value-and-time"))) {
            board.awaitOpened();
            board.print("");
            board.print("60000,1.5");
            pollUntil(source, () -> heard.lines().contains("1.5"));
            port.unplug();
            pollUntil(source, () -> heard.lines().contains("link lost"));
            LineAdc again = LineAdc.resetOnOpen("", "20,1.6");
            port.plug(again);
            pollUntil(source, () -> heard.lines().contains("1.6"));
        }
        assertEquals(List.of("1.5", "link lost", "link resumed", "1.6"), heard.lines());
        assertTrue(heard.readings().get(1).tNanos() > heard.readings().get(0).tNanos());
    }

    @Test
    void aSourceThatIsClosedWhileTheInstrumentIsAwayCloses() throws BridgeException {
        port.plug(ScpiResponder.reading("1"));
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("generic-scpi"))) {
            pollUntil(source, () -> !heard.readings().isEmpty());
            port.unplug();
            pollUntil(source, () -> heard.lines().contains("link lost"));
        }
        assertTrue(
                Thread.getAllStackTraces().keySet().stream()
                        .noneMatch(each -> each.getName().contains(port.path())),
                "the reader has ended");
    }

    @Test
    void whatComesOverTheWireByteByByteIsReadAsWell() throws BridgeException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("value-and-time"))) {
            board.awaitOpened();
            byte[] lines = "\n10,1.5\r\n30,1.6\r\n".getBytes(StandardCharsets.US_ASCII);
            FaultyLine.inPiecesOf(lines, 1).forEach(board::send);
            pollUntil(source, () -> heard.lines().contains("1.6"));
        }
        assertEquals(List.of("1.5", "1.6"), heard.lines());
    }

    @Test
    void aPortInUseIsSaidInOneLine() throws BridgeException {
        port.plug(ScpiResponder.reading("1"));
        try (ReadingSource source = open(InstrumentOptions.defaults().withMeter("generic-scpi"))) {
            assertEquals(Measurand.DC_VOLTS, source.measurand());
            PortUnavailable said = assertThrows(PortUnavailable.class, () -> open(InstrumentOptions.defaults()));
            assertEquals(
                    port.path() + " is in use: close the other program that uses it, then try again",
                    said.getMessage());
        }
    }

    @Test
    void whatIsNoSerialPortIsSaidInOneLine() {
        PortUnavailable said = assertThrows(
                PortUnavailable.class,
                () -> InstrumentSources.open("/dev/null", InstrumentOptions.defaults(), Ticker.system()));
        assertEquals("/dev/null is no serial port: see 'slugpeak ports' for what is there", said.getMessage());
    }

    @Test
    void theListOfPortsIsMadeWithoutOpeningAny() throws BridgeException {
        for (PortInfo each : SerialPorts.list()) {
            assertTrue(!each.path().isEmpty() && !each.description().isEmpty(), each::toString);
        }
    }

    @Test
    void missingPortIsSaidInOneLine() {
        PortUnavailable said = assertThrows(PortUnavailable.class, () -> open(InstrumentOptions.defaults()));
        assertEquals(
                "there is no port " + port.path()
                        + ": plug the instrument in, and see 'slugpeak ports' for what is there",
                said.getMessage());
    }

    private ReadingSource open(InstrumentOptions options) throws BridgeException {
        return InstrumentSources.open(port.path(), options, Ticker.system());
    }

    private void pollUntil(ReadingSource source, BooleanSupplier done) throws BridgeException {
        long endNanos = System.nanoTime() + PATIENCE_NANOS;
        while (!done.getAsBoolean()) {
            source.poll(TimeUnit.MILLISECONDS.toNanos(50), heard);
            assertTrue(System.nanoTime() - endNanos < 0, () -> "only this came: " + heard.lines() + heard.details());
        }
    }
}
