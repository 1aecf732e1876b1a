package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.bridge.testkit.Transcript;
import org.slugpeak.bridge.time.Ticker;

/** Instruments on the network and on USB, through this machine's own sockets and devices. */
@Timeout(60)
class NetworkBenchTest {

    private static final long WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    @TempDir
    Path folder;

    private final Transcript heard = new Transcript();

    @Test
    void aMeterOnTheNetworkIsFoundByItsNameAndRead() throws BridgeException {
        ScpiResponder meter = ScpiResponder.reading("+1.25", "-2.5");
        try (TcpBench bench = TcpBench.of(meter);
                InstrumentSource source = open("tcp:localhost:" + bench.port())) {
            pollUntil(source, () -> heard.readings().size() >= 2);
            assertEquals(
                    new SourceDescription.Instrument("EMBER FELL INSTRUMENTS BM-450, firmware 1.07"),
                    source.description());
        }
        assertEquals(1.25, heard.readings().get(0).value());
        meter.awaitMessage("SYSTem:LOCal");
    }

    @Test
    void aMeterThatIsSwitchedOffAndOnIsLostAndBack() throws BridgeException {
        ScpiResponder meter = ScpiResponder.reading("+1.25");
        TcpBench bench = TcpBench.of(meter);
        int port = bench.port();
        try (InstrumentSource source = open("tcp:127.0.0.1:" + port)) {
            pollUntil(source, () -> !heard.readings().isEmpty());
            bench.close();
            pollUntil(source, () -> heard.lines().contains("link lost"));
            try (TcpBench again = TcpBench.at(port, ScpiResponder.reading("3.5"))) {
                pollUntil(source, () -> heard.lines().contains("3.5"));
                assertTrue(heard.lines().contains("link resumed"));
                assertEquals(port, again.port());
            }
        }
    }

    @Test
    void whereNothingListensThatIsSaid() {
        TcpBench bench = TcpBench.of(ScpiResponder.reading("1"));
        int port = bench.port();
        bench.close();
        assertEquals(
                "nothing listens at 127.0.0.1 port " + port
                        + ": is the raw socket (SCPI) switched on in the instrument's"
                        + " network menu, and is this its port? Usual: 5025",
                refusal("tcp:127.0.0.1:" + port, InstrumentOptions.defaults()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tcp:no-such-machine.invalid:5025 | no machine is called 'no-such-machine.invalid': check the name, or write the instrument's number from its network menu
            tcp:localhost:99999 | tcp:localhost:99999 is no address on the network: write tcp:HOST:PORT, for example tcp:192.168.1.20:5025
            /dev/usbtmc77 | there is no /dev/usbtmc77: plug the instrument in and switch it on; if it does not appear, load the driver with 'sudo modprobe usbtmc'
            """)
    void whatIsInTheWayIsSaid(String address, String message) {
        assertEquals(message, refusal(address, InstrumentOptions.defaults()));
    }

    @Test
    void aSpeedIsNotForTheNetwork() {
        InstrumentOptions options = InstrumentOptions.defaults().withBaud(9600);
        assertEquals(OptionalInt.of(9600), options.baud());
        assertEquals(
                "--baud is for serial ports; tcp:localhost has no speed: leave it out",
                refusal("tcp:localhost", options));
    }

    /** A pseudo-terminal stands for the device: one message a read, as its line discipline gives one line a read. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aMeterAtUsbIsAskedBeforeItIsRead() throws Exception {
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(ScpiResponder.reading("+1.25"));
            Path device = Files.createSymbolicLink(folder.resolve("usbtmc0"), Path.of(port.path()));
            try (InstrumentSource source = open(device.toString())) {
                pollUntil(source, () -> heard.readings().size() >= 3);
            }
        }
        assertEquals("1.25", heard.lines().get(0));
    }

    private static InstrumentSource open(String address) throws BridgeException {
        return InstrumentSources.open(address, InstrumentOptions.defaults(), Ticker.system());
    }

    private static String refusal(String address, InstrumentOptions options) {
        return assertThrows(BridgeException.class, () -> InstrumentSources.open(address, options, Ticker.system()))
                .getMessage();
    }

    private void pollUntil(InstrumentSource source, BooleanSupplier done) throws BridgeException {
        while (!done.getAsBoolean()) {
            source.poll(WAIT_NANOS, heard);
        }
    }
}
