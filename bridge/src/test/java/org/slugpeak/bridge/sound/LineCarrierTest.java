package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;

/** A live sound input, with a device that does as told. */
@Timeout(30)
class LineCarrierTest {

    private static final long WAIT_NANOS = 50_000_000L;

    private final ScriptedDevice device = new ScriptedDevice();
    private final Told told = new Told();
    private SoundSource source;

    @BeforeEach
    void open() throws BridgeException {
        LineCarrier carrier = LineCarrier.open(device, device);
        source = new SoundSource(carrier, SoundOptions.defaults(), OptionalDouble.of(2));
    }

    @AfterEach
    void close() {
        source.close();
        source.close();
    }

    private void pollUntil(BooleanSupplier enough) throws BridgeException {
        while (!enough.getAsBoolean()) {
            source.poll(WAIT_NANOS, told);
        }
    }

    @Test
    void samplesBecomeReadingsInVoltsOnTheComputersClock() throws Exception {
        device.play(50);
        pollUntil(() -> told.readings.size() == 21);
        assertEquals(0.5, told.last().value(), 0.0005);
        assertEquals(Condition.OK, told.last().condition());
        // Half a second of samples came since the clock stood at one second.
        assertEquals(1.5, told.last().tNanos() / 1e9, 1e-7);
        assertEquals(new Measurand("tone level", "V"), source.measurand());
        assertEquals(
                new SourceDescription.Audio(
                        "Scripted input", OptionalDouble.empty(), 48_000, 2, 16, false, OptionalDouble.of(2)),
                source.description());
        assertTrue(source.quality().orElseThrow().hasTone());
    }

    @Test
    void nothingIsKnownBeforeTheFirstSample() throws Exception {
        source.poll(0, told);
        assertTrue(source.quality().isEmpty());
        assertEquals(0, told.readings.size());
    }

    @Test
    void anUnpluggedInputIsLostOnceAndResumesByItself() throws Exception {
        device.play(20);
        pollUntil(() -> told.readings.size() == 6);
        device.unplug();
        pollUntil(() -> told.links.size() == 1);
        int tries = device.opened();
        for (int i = 0; i < 30; i++) {
            device.pass(100_000_000L);
            source.poll(0, told);
        }
        assertEquals(List.of("lost"), told.links);
        // It waits 0.2 s, then twice as long each time: tries at 0.2, 0.6, 1.4 and 3.0 s.
        assertEquals(4, device.opened() - tries);
        device.plugIn();
        device.pass(2_000_000_000L);
        source.poll(0, told);
        device.play(20);
        pollUntil(() -> told.readings.size() == 12);
        assertEquals(List.of("lost", "resumed"), told.links);
        assertEquals(0.5, told.last().value(), 0.0005);
        assertTrue(told.last().tNanos() > 6_000_000_000L, () -> "" + told.last().tNanos());
    }

    @Test
    void anInputThatFallsSilentWithoutAWordIsLostToo() throws Exception {
        device.play(20);
        pollUntil(() -> told.readings.size() == 6);
        device.pass(1_400_000_000L);
        source.poll(0, told);
        assertEquals(List.of(), told.links);
        device.pass(200_000_000L);
        source.poll(0, told);
        assertEquals(List.of("lost"), told.links);
    }

    @Test
    void lostSamplesAreCountedToldAndMoveTheClock() throws Exception {
        device.play(250);
        pollUntil(() -> told.readings.size() == 121);
        device.pass(300_000_000L);
        device.play(250);
        pollUntil(() -> told.readings.size() == 246);
        assertEquals(List.of("300 ms of sound were lost (1 so far): the computer is too busy"), told.garbled);
        assertEquals(6.3, told.last().tNanos() / 1e9, 1e-6);
        for (int i = 1; i < told.readings.size(); i++) {
            assertTrue(told.readings.get(i).tNanos() > told.readings.get(i - 1).tNanos());
        }
    }

    @Test
    void anInputThatIsNotThereIsRefusedAtOnce() {
        device.unplug();
        assertThrows(PortUnavailable.class, () -> LineCarrier.open(device, device));
    }
}
