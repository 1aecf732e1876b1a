package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.bridge.testkit.Transcript;

/** Finding out what an instrument speaks, on a clock that is moved by waiting. */
class AuditionTest {

    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);
    private static final String BOOT =
            "S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F\n";
    private static final String DATA = "D 1.5 820 -*EE24\n";

    private final ManualTicker ticker = new ManualTicker(0);
    private final ScriptedCarrier carrier = new ScriptedCarrier(ticker);
    private final Transcript heard = new Transcript();
    private Audition audition;
    private InstrumentSource source;

    @BeforeEach
    void holdAnAudition() throws BadConfiguration {
        audition = new Audition(
                List.of(decoder("slugpeak-adc"), decoder("generic-line")),
                HeardFamilies.of(Instruments.create().familiesHeard(), MeterSetting.DEFAULT),
                decoder("generic-scpi"),
                Audition.FIRST_SILENCE_NANOS);
        source = new InstrumentSource(carrier, audition, ticker);
    }

    @Test
    void aMeterThatTalksIsFoundByListeningAndIsAskedNothing() throws BridgeException {
        carrier.text(SECOND / 10, "1.5\n").text(SECOND / 5, "1.6\n").text(SECOND / 4, "1.7\n");
        assertTrue(source.settle(20 * SECOND));
        assertTrue(audition.isFound());
        assertEquals(List.of(), carrier.sent());
        pollAll();
        assertEquals(List.of("1.6", "1.7"), heard.lines());
    }

    @Test
    void aSilentMeterIsAskedForItsName() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs("EMBER FELL,BM-450,0,1").answering("READ?", "1.5");
        carrier.answeredBy((line, message) ->
                meter.take(message.strip()).ifPresent(answer -> line.text(SECOND / 100, answer + "\r\n")));
        assertTrue(source.settle(20 * SECOND));
        assertTrue(audition.isFound());
        assertEquals(new SourceDescription.Instrument("EMBER FELL BM-450, firmware 1"), source.description());
        assertTrue(ticker.nowNanos() < SECOND, "took " + ticker.nowNanos());
        source.close();
        assertEquals("SYSTem:LOCal\n", carrier.sent().get(carrier.sent().size() - 1));
    }

    @Test
    void aBoardThatStartsAnewWhenThePortOpensIsWaitedFor() throws BridgeException {
        carrier.text(2 * SECOND, "\u0001\n" + BOOT);
        for (long i = 1; i <= 3; i++) {
            carrier.text(2 * SECOND + i * SECOND / 20, DATA);
        }
        assertTrue(source.settle(20 * SECOND));
        assertTrue(audition.isFound());
        assertEquals(new SourceDescription.Instrument("bench-meter"), source.description());
    }

    @Test
    void aBoardThatIsTalkingIsAskedForItsStartLine() throws BridgeException {
        for (long i = 1; i <= 100; i++) {
            carrier.text(i * SECOND / 20, DATA);
        }
        carrier.answeredBy((line, message) -> {
            if (message.equals("?\n")) {
                line.text(SECOND / 100, BOOT);
            }
        });
        assertTrue(source.settle(20 * SECOND));
        assertTrue(audition.isFound());
        assertEquals(List.of("?\n"), carrier.sent());
    }

    @Test
    void nobodyThereIsKnownAfterFiveSeconds() throws BridgeException {
        source.settle(20 * SECOND);
        assertFalse(audition.isFound());
        assertFalse(audition.hasHeard());
        assertEquals(5 * SECOND, ticker.nowNanos());
        assertEquals(
                "port at 9600 baud: nothing answers: is the instrument switched on, is the cable right, is its speed another"
                        + " (--baud)?",
                explanation());
    }

    @Test
    void aWrongSpeedIsKnownAtOnce() throws BridgeException {
        for (long i = 1; i <= 10; i++) {
            carrier.bytes(i * SECOND / 20, new byte[] {(byte) 0xF8, 0, (byte) 0x80, '\r'});
        }
        source.settle(20 * SECOND);
        assertTrue(audition.isUnreadable());
        assertTrue(ticker.nowNanos() < SECOND, "took " + ticker.nowNanos());
        assertEquals(
                "port at 9600 baud: only bytes that are no text: give the instrument's speed with --baud",
                explanation());
    }

    @Test
    void linesWithSeveralNumbersAreShownAndNotGuessedAt() throws BridgeException {
        for (long i = 1; i <= 200; i++) {
            carrier.text(i * SECOND / 20, i + ",1.5\n");
        }
        source.settle(20 * SECOND);
        assertFalse(audition.isFound());
        String said = explanation();
        assertTrue(said.startsWith("port at 9600 baud: an instrument that prints lines, says '"), said);
        assertTrue(said.endsWith(": name the instrument with --meter, or describe it (--meter FILE.toml)"), said);
    }

    private String explanation() {
        Attempts attempts = new Attempts("port", List.of(9600));
        attempts.failed(audition);
        return attempts.explain().getMessage();
    }

    private void pollAll() throws BridgeException {
        for (int i = 0; i < 5; i++) {
            source.poll(0, heard);
        }
    }

    private static Decoder decoder(String name) throws BadConfiguration {
        return Instruments.create().find(name).decoders().create(MeterSetting.DEFAULT);
    }
}
