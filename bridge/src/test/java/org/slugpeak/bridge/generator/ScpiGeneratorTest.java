package org.slugpeak.bridge.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;

/** An invented generator that understands SCPI, at the far end of a pseudo-terminal and of a socket. */
@EnabledOnOs(OS.LINUX)
class ScpiGeneratorTest {

    private static final GeneratorSetting CARRIER =
            new GeneratorSetting(455e3, LevelUnit.DBM.toEmfVolts(-60), Modulation.NONE, true);

    @TempDir
    Path folder;

    private final SimulatedGenerator simulated = new SimulatedGenerator(0, 1);
    private BenchPort port;

    @BeforeEach
    void makeThePort() {
        port = BenchPort.in(folder);
    }

    @AfterEach
    void clearTheBench() {
        port.close();
    }

    private DescribedGenerator open() throws BridgeException {
        return Generators.open(port.path(), "generic-scpi", OptionalInt.empty(), Ticker.system());
    }

    @Test
    void setsFrequencyLevelAndOutputAndTakesWhatTheGeneratorMakesOfThem() throws BridgeException {
        port.plug(ScpiResponder.of(simulated.scpi()));
        DescribedGenerator generator = open();
        assertEquals("EMBER FELL INSTRUMENTS SG-30, firmware 2.1", generator.name());
        GeneratorSetting real = generator.set(CARRIER.withFrequency(455_003));
        assertEquals(455_000, real.frequencyHz());
        assertEquals(simulated.radiates(), real);
        assertEquals(Optional.empty(), generator.leave());
        assertFalse(simulated.radiates().on());
    }

    @Test
    void aGeneratorOnTheNetworkObeysTheSame() throws BridgeException {
        try (TcpBench bench = TcpBench.of(ScpiResponder.of(simulated.scpi()))) {
            DescribedGenerator generator = Generators.open(
                    "tcp:127.0.0.1:" + bench.port(), "generic-scpi", OptionalInt.empty(), Ticker.system());
            generator.set(CARRIER.withModulation(new Modulation(400, 30)));
            assertEquals(new Modulation(400, 30), simulated.radiates().modulation());
            assertEquals(Optional.empty(), generator.leave());
            assertFalse(simulated.radiates().on());
        }
    }

    @Test
    void tellsHowItWasLeftByWhoeverUsedItBefore() throws BridgeException {
        port.plug(ScpiResponder.of(simulated.scpi()));
        DescribedGenerator generator = open();
        GeneratorSetting stood = generator.asItStands(CARRIER);
        assertEquals(1000, stood.frequencyHz());
        assertEquals(-73, LevelUnit.DBM.ofEmfVolts(stood.emfVolts()), 1e-9);
        assertTrue(stood.on());
        generator.leave();
    }

    @Test
    void whatLiesBeyondTheLimitsThatItTellsIsSaidAndNotSent() throws BridgeException {
        ScpiResponder responder = ScpiResponder.of(simulated.scpi());
        port.plug(responder);
        DescribedGenerator generator = open();
        String message = assertThrows(BridgeException.class, () -> generator.set(CARRIER.withFrequency(98e6)))
                .getMessage();
        assertTrue(message.contains("goes from 100 to 30000000 Hz and not to 98000000"), message);
        assertEquals(1, message.lines().count());
        assertEquals(LevelUnit.DBM.toEmfVolts(13), generator.reach().highestEmfVolts(), 1e-9);
        String tooMuch = assertThrows(BridgeException.class, () -> generator.set(CARRIER.withEmf(3)))
                .getMessage();
        assertTrue(tooMuch.contains("goes from -140 to 13 dBm and not to 16.53"), tooMuch);
        generator.leave();
        assertTrue(responder.messages().stream().noneMatch(it -> it.contains("98000000") || it.contains("16.53")));
    }

    private static ScpiMeter withoutLimits() {
        return ScpiMeter.identifiedAs("EMBER FELL,FG-2,0,1")
                .obeying("*CLS", any -> Optional.empty())
                .obeying("SOURce:FREQuency", any -> Optional.of("-222,\"Data out of range\""))
                .answering("SOURce:FREQuency?", "455000")
                .answering("SOURce:POWer?", "-60");
    }

    @Test
    void oneThatAnswersItsSettingToEveryQuestionHasNoKnownLimits() throws BridgeException {
        port.plug(ScpiResponder.of(withoutLimits()));
        DescribedGenerator generator = open();
        assertTrue(generator.reach().gives(98e6));
        assertEquals(Double.POSITIVE_INFINITY, generator.reach().highestEmfVolts());
        generator.leave();
    }

    @Test
    void saysWhatTheGeneratorRefuses() throws BridgeException {
        port.plug(ScpiResponder.of(withoutLimits()));
        DescribedGenerator generator = open();
        String message = assertThrows(BridgeException.class, () -> generator.set(CARRIER.withFrequency(98e6)))
                .getMessage();
        assertTrue(message.contains("does not go to 98000000 Hz"), message);
        assertTrue(message.contains("-222,\"Data out of range\""), message);
        assertEquals(1, message.lines().count());
        generator.leave();
    }

    @Test
    void aLevelThatItDoesNotKnowInDbmIsSaidAndNothingIsGuessed() throws BridgeException {
        port.plug(ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL,FG-2,0,1")
                .obeying("SOURce:FREQuency", any -> Optional.empty())
                .answering("SOURce:FREQuency?", "455000")
                .answering("SOURce:POWer?", "0.05")));
        DescribedGenerator generator = open();
        String message = assertThrows(BridgeException.class, () -> generator.set(CARRIER))
                .getMessage();
        assertTrue(message.contains("does not go to -60 dBm but says 0.05"), message);
        assertTrue(message.contains("--generator-kind"), message);
        generator.leave();
    }

    @Test
    void somethingThatDoesNotAnswerIsSaidInOneLine() {
        ScpiResponder mute = ScpiResponder.of(simulated.scpi());
        mute.hold();
        port.plug(mute);
        String message = assertThrows(BridgeException.class, this::open).getMessage();
        assertTrue(message.contains("does not answer"), message);
        assertTrue(message.contains("--generator-baud"), message);
        assertEquals(1, message.lines().count());
    }

    @Test
    void somethingThatIsNoGeneratorIsSaidSo() throws BridgeException {
        port.plug(ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-450,0,1.07")));
        DescribedGenerator generator = open();
        String message = assertThrows(BridgeException.class, () -> generator.set(CARRIER))
                .getMessage();
        assertTrue(message.contains("does not answer"), message);
        generator.leave();
    }

    @Test
    void aPulledPlugIsSaidSoAndWhenItIsBackEverythingIsSetAnew() throws BridgeException {
        port.plug(ScpiResponder.of(simulated.scpi()));
        DescribedGenerator generator = open();
        generator.set(CARRIER);
        port.unplug();
        String message = assertThrows(BridgeException.class, () -> generator.set(CARRIER.withFrequency(456e3)))
                .getMessage();
        assertTrue(message.contains("has gone"), message);
        simulated.powerFails();
        port.plug(ScpiResponder.of(simulated.scpi()));
        while (!generator.isLinked()) {
            generator.await(1_000_000_000L);
        }
        GeneratorSetting again = generator.set(CARRIER.withFrequency(456e3));
        assertEquals(simulated.radiates(), again);
        assertTrue(simulated.radiates().on());
        port.unplug();
        String left = generator.leave().orElseThrow();
        assertTrue(left.contains("may still give a signal"), left);
    }
}
