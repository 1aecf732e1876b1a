package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.scpi.ScpiGenerator;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.time.Ticker;

/** An invented generator at the far end of a pseudo-terminal. */
@EnabledOnOs(OS.LINUX)
class GeneratorPortTest {

    private static final String NAME = "EMBER FELL INSTRUMENTS,SG-30,0,2.1";
    private static final double HIGHEST_HZ = 1e6;

    @TempDir
    Path folder;

    private BenchPort port;
    private String frequency = "1000";

    @BeforeEach
    void makeThePort() {
        port = BenchPort.in(folder);
    }

    @AfterEach
    void clearTheBench() {
        port.close();
    }

    /** Rounds to its own step of 10 Hz; refuses with the text of SCPI-1999 volume 2 section 21.8. */
    private ScpiMeter generator() {
        return ScpiMeter.identifiedAs(NAME)
                .obeying("SOURce:FREQuency", this::tune)
                .answering("SOURce:FREQuency?", () -> frequency);
    }

    private Optional<String> tune(String argument) {
        double hz = Double.parseDouble(argument);
        if (hz > HIGHEST_HZ) {
            return Optional.of("-222,\"Data out of range\"");
        }
        frequency = "+" + Math.round(hz / 10) * 10 + ".0E+00";
        return Optional.empty();
    }

    private ScpiGenerator open() throws BridgeException {
        return GeneratorPort.open(port.path(), GeneratorPort.USUAL_BAUD, Ticker.system());
    }

    @Test
    void setsTheFrequencyAndTakesWhatTheGeneratorMakesOfIt() throws BridgeException {
        ScpiResponder responder = ScpiResponder.of(generator());
        port.plug(responder);
        try (ScpiGenerator generator = open()) {
            assertEquals(455_000, generator.frequency(455_003));
            assertEquals(456_000, generator.frequency(456_000));
        }
        responder.awaitMessage("SOURce:FREQuency 455003");
    }

    @Test
    void saysWhatTheGeneratorRefuses() throws BridgeException {
        port.plug(ScpiResponder.of(generator()));
        try (ScpiGenerator generator = open()) {
            String message = assertThrows(BridgeException.class, () -> generator.frequency(10.7e6))
                    .getMessage();
            assertTrue(message.contains("does not go to 10700 kHz"), message);
            assertTrue(message.contains("-222 Data out of range"), message);
            assertTrue(message.contains("--span"), message);
        }
    }

    @Test
    void somethingThatDoesNotAnswerIsSaidInOneLine() {
        ScpiResponder mute = ScpiResponder.of(generator());
        mute.hold();
        port.plug(mute);
        String message = assertThrows(BridgeException.class, this::open).getMessage();
        assertTrue(message.contains("does not answer"), message);
        assertTrue(message.contains("--generator-baud"), message);
        assertEquals(1, message.lines().count());
    }

    @Test
    void somethingThatIsNoGeneratorIsSaidSo() throws BridgeException {
        port.plug(ScpiResponder.of(ScpiMeter.identifiedAs(NAME)));
        try (ScpiGenerator generator = open()) {
            String message = assertThrows(BridgeException.class, () -> generator.frequency(455e3))
                    .getMessage();
            assertTrue(message.contains("does not answer"), message);
        }
    }

    @Test
    void aPulledPlugIsSaidSo() throws BridgeException {
        port.plug(ScpiResponder.of(generator()));
        try (ScpiGenerator generator = open()) {
            generator.frequency(455e3);
            port.unplug();
            String message = assertThrows(BridgeException.class, () -> generator.frequency(456e3))
                    .getMessage();
            assertTrue(message.contains("has gone"), message);
        }
    }
}
