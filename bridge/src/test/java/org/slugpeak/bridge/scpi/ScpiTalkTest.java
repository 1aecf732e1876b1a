package org.slugpeak.bridge.scpi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.bridge.testkit.Transcript;

/** Whole talks with invented meters, on a clock that is moved by waiting. */
class ScpiTalkTest {

    private static final long ANSWER_NANOS = TimeUnit.MILLISECONDS.toNanos(5);
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(15);
    private static final String NAME = "EMBER FELL,BM-450,0,1.07";

    private final ManualTicker ticker = new ManualTicker(0);
    private final ScriptedCarrier carrier = new ScriptedCarrier(ticker);
    private final Transcript heard = new Transcript();

    @Test
    void aMeterIsNamedSetAndRead() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "+1.25000000E+00");
        InstrumentSource source = talk(meter, MeterSetting.DEFAULT);
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 3);
        assertEquals(List.of("1.25", "1.25", "1.25"), heard.lines());
        assertEquals(
                List.of(
                        "*IDN?",
                        "SYSTem:ERRor?",
                        "SYSTem:REMote",
                        "SYSTem:ERRor?",
                        "CONFigure:VOLTage:DC",
                        "SYSTem:ERRor?",
                        "READ?"),
                meter.messages().subList(0, 7));
        source.close();
        source.close();
        assertEquals("SYSTem:LOCal", meter.messages().get(meter.messages().size() - 1));
        assertEquals(1, meter.messages().stream().filter("SYSTem:LOCal"::equals).count());
    }

    @Test
    void questionsThatAreNotKnownCostHalfASecondEach() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("MEASure:VOLTage:DC?", "0.5");
        InstrumentSource source = talk(meter, MeterSetting.DEFAULT);
        assertTrue(source.settle(PATIENCE_NANOS));
        assertTrue(ticker.nowNanos() < TimeUnit.SECONDS.toNanos(1), "took " + ticker.nowNanos());
        pollUntilReadings(source, 2);
        assertEquals(List.of("0.5", "0.5"), heard.lines());
    }

    @Test
    void aMeterWithoutAnErrorQueueIsReadAllTheSame() throws BridgeException {
        InstrumentSource source = source(MeterSetting.DEFAULT);
        carrier.answeredBy((line, message) -> {
            if (message.startsWith("*IDN?")) {
                line.text(ANSWER_NANOS, NAME + "\r\n");
            } else if (message.startsWith("FETCh?")) {
                line.text(ANSWER_NANOS, "2.5\r\n");
            }
        });
        assertTrue(source.settle(PATIENCE_NANOS));
        assertEquals(
                List.of("SYSTem:REMote\n", "CONFigure:VOLTage:DC\n"),
                carrier.sent().subList(2, 4));
    }

    @Test
    void aQuestionThatIsAnsweredByNoValueIsNotTheOneToAsk() throws BridgeException {
        ScpiMeter meter =
                ScpiMeter.identifiedAs(NAME).answering("FETCh?", "9.91E37").answering("MEASure:VOLTage:DC?", "0.5");
        InstrumentSource source = talk(meter, MeterSetting.DEFAULT);
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 1);
        assertEquals(List.of("0.5"), heard.lines());
    }

    @Test
    void aSlowMeterIsWaitedFor() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME);
        InstrumentSource source = source(MeterSetting.DEFAULT);
        carrier.answeredBy((line, message) -> {
            if (message.startsWith("READ?")) {
                line.text(TimeUnit.MILLISECONDS.toNanos(2_500), "3.5\r\n");
            } else {
                meter.take(message.strip()).ifPresent(answer -> line.text(ANSWER_NANOS, answer + "\r\n"));
            }
        });
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 4);
        assertEquals(List.of("3.5", "3.5", "3.5", "3.5"), heard.lines());
        assertFalse(carrier.sent().contains("FETCh?\n"));
    }

    @Test
    void aFixedRangeIsSetAndAsked() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("MEASure:VOLTage:AC?", "0.5");
        InstrumentSource source = talk(meter, new MeterSetting(MeterSetting.Function.AC, OptionalDouble.of(10)));
        assertTrue(source.settle(PATIENCE_NANOS));
        assertTrue(meter.messages().contains("CONFigure:VOLTage:AC"));
        assertTrue(meter.messages().contains("VOLTage:AC:RANGe 10"));
        assertTrue(meter.messages().contains("MEASure:VOLTage:AC? 10"), () -> "" + meter.messages());
    }

    @Test
    void aRangeThatTheMeterRefusesIsSaid() {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "1");
        InstrumentSource source = talk(meter, new MeterSetting(MeterSetting.Function.DC, OptionalDouble.of(5_000)));
        BadConfiguration said = assertThrows(BadConfiguration.class, () -> source.settle(PATIENCE_NANOS));
        assertEquals(
                "scripted port: EMBER FELL BM-450, firmware 1.07 does not take 'VOLTage:DC:RANGe 5000' (-222 Data out of range):"
                        + " give --range one of its own ranges, or leave it out",
                said.getMessage());
    }

    @Test
    void oldErrorsAreNotBlamedOnTheRange() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "1").writingNoErrorAs("+0,\"No error\"");
        meter.take("NONSENSE");
        meter.take("MORE:NONSENSE");
        InstrumentSource source = talk(meter, new MeterSetting(MeterSetting.Function.DC, OptionalDouble.of(10)));
        assertTrue(source.settle(PATIENCE_NANOS));
    }

    @Test
    void specialValuesAreConditionsAndNotNumbers() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME)
                .answering("READ?", "1", "9.9E37", "-9.90000000E+37", "9.91E37", "OL", "+1.5 V", "2,99,17");
        InstrumentSource source = talk(meter, MeterSetting.DEFAULT);
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 7);
        assertEquals(
                List.of("1.0", "over-range", "over-range", "no-value", "over-range", "1.5", "2.0"),
                heard.lines().subList(0, 7));
    }

    @Test
    void aMeterTurnedToOhmsIsSaidAndReadAgainWhenItIsTurnedBack() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "1 V", "47 Ohm", "garbage", "2 V");
        InstrumentSource source = talk(meter, MeterSetting.DEFAULT);
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 2);
        assertEquals(List.of("1.0", "garbled malformed", "garbled malformed", "2.0"), heard.lines());
        assertEquals(
                "the meter reads 'Ohm', not volts: turn its switch to volts",
                heard.details().get(0));
    }

    @Test
    void aMeterThatWasSwitchedOffAndOnIsSetAnew() throws BridgeException {
        boolean[] off = {false};
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "1");
        InstrumentSource source = source(MeterSetting.DEFAULT);
        carrier.answeredBy((line, message) -> {
            if (!off[0]) {
                meter.take(message.strip()).ifPresent(answer -> line.text(ANSWER_NANOS, answer + "\r\n"));
            }
        });
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 5);
        off[0] = true;
        pollUntil(source, () -> heard.lines().contains("garbled unanswered"));
        assertTrue(heard.lines().contains("link stale"));
        off[0] = false;
        long before = count(meter, "CONFigure:VOLTage:DC");
        pollUntil(source, () -> heard.lines().contains("link resumed"));
        assertEquals(before + 1, count(meter, "CONFigure:VOLTage:DC"));
    }

    @Test
    void aMeterThatAnswersNoQuestionIsSaid() throws BridgeException {
        InstrumentSource source = talk(ScpiMeter.identifiedAs(NAME), MeterSetting.DEFAULT);
        assertFalse(source.settle(PATIENCE_NANOS));
        assertEquals(
                "EMBER FELL BM-450, firmware 1.07 answers none of READ?, FETCh?, MEASure:VOLTage:DC?"
                        + " (-113 Undefined header): describe it (--meter FILE.toml, see template.toml)",
                source.trouble().orElseThrow());
    }

    @Test
    void anEchoingMeterIsReadAllTheSame() throws BridgeException {
        ScpiMeter meter = ScpiMeter.identifiedAs(NAME).answering("READ?", "1");
        InstrumentSource source = source(MeterSetting.DEFAULT);
        carrier.answeredBy((line, message) -> {
            String echo = message.strip() + "\r\n";
            line.text(
                    ANSWER_NANOS,
                    echo
                            + meter.take(message.strip())
                                    .map(answer -> answer + "\r\n")
                                    .orElse(""));
        });
        assertTrue(source.settle(PATIENCE_NANOS));
        pollUntilReadings(source, 3);
        assertEquals(List.of("1.0", "1.0", "1.0"), heard.lines());
        assertEquals(new SourceDescription.Instrument("EMBER FELL BM-450, firmware 1.07"), source.description());
    }

    private static long count(ScpiMeter meter, String message) {
        return meter.messages().stream().filter(message::equals).count();
    }

    private void pollUntilReadings(InstrumentSource source, int count) throws BridgeException {
        pollUntil(source, () -> heard.readings().size() >= count);
    }

    private void pollUntil(InstrumentSource source, java.util.function.BooleanSupplier done) throws BridgeException {
        for (int i = 0; i < 1_000 && !done.getAsBoolean(); i++) {
            source.poll(TimeUnit.SECONDS.toNanos(1), heard);
        }
        assertTrue(done.getAsBoolean(), () -> "only " + heard.lines());
    }

    private InstrumentSource talk(ScpiMeter meter, MeterSetting setting) {
        carrier.answeredBy((line, message) ->
                meter.take(message.strip()).ifPresent(answer -> line.text(ANSWER_NANOS, answer + "\r\n")));
        return source(setting);
    }

    private InstrumentSource source(MeterSetting setting) {
        try {
            return new InstrumentSource(
                    carrier,
                    Instruments.create().find("generic-scpi").decoders().create(setting),
                    ticker);
        } catch (BadConfiguration e) {
            throw new AssertionError(e);
        }
    }
}
