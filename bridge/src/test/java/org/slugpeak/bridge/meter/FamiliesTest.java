package org.slugpeak.bridge.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.InstrumentDescription;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.InstrumentSource;
import org.slugpeak.bridge.testkit.ManualTicker;
import org.slugpeak.bridge.testkit.ScriptedCarrier;
import org.slugpeak.bridge.testkit.Transcript;

/** Finding a hand-held meter by listening; the frames are rows of shared/reference/meters/frames.csv. */
class FamiliesTest {

    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

    private final ManualTicker ticker = new ManualTicker(0);
    private final ScriptedCarrier carrier = new ScriptedCarrier(ticker);
    private final Transcript heard = new Transcript();
    private Audition audition;

    @Test
    void aFamilyThatNoOtherReadsIsFoundBySeveralFrames() throws BridgeException {
        assertEquals(
                List.of("1.234", "1.234", "1.234", "1.234"), found(2400, "17 20 35 4D 5B 61 7F 82 97 A0 B0 C0 D4 E0"));
        assertEquals("an FS9721 meter", audition.description());
        assertTrue(carrier.sent().isEmpty(), "a meter that talks is asked nothing: " + carrier.sent());
    }

    @Test
    void theLongerOfTwoThatLookAlikeIsNotTakenForTheShorter() throws BridgeException {
        found(2400, "1E 20 3A 4B 5D 68 7F 84 9E A0 B0 C0 D2 E0 F0");
        assertEquals("a DTM0660 meter", audition.description());
    }

    @Test
    void flagsThatLookLikeLineEndsDoNoHarm() throws BridgeException {
        assertEquals(
                List.of("1.015", "1.015", "1.015", "1.015"), found(2400, "2B 31 30 31 35 20 31 31 00 00 80 0A 0D 0A"));
    }

    @Test
    void twoThatCannotBeToldApartAreAskedFor() throws BridgeException {
        listen(19_200, "30 31 32 33 34 35 3B 30 30 30 3A 30 0D 0A");
        assertFalse(audition.isFound());
        assertEquals(
                "this may be an ES51921/22 meter (14 bytes at 19200 baud), an ES51931/32 meter (14 bytes at 19200 baud),"
                        + " which the same bytes do not tell apart: which chip or kind is your meter? Start again with"
                        + " --meter es519xx-14 or --meter es519xx-14-lpf2",
                audition.question().orElse(""));
        assertEquals(List.of(), heard.lines());
    }

    @Test
    void sameShapeWithOtherVoltsIsAskedFor() throws BridgeException {
        listen(2400, "31 31 32 33 34 3B 30 30 3A 0D 0A");
        assertTrue(audition.question().orElse("").endsWith("--meter es519xx-11-2400 or --meter es519xx-11-alt"));
        assertEquals(List.of(), heard.lines());
    }

    @Test
    void framesThatLookLikeNumbersAreNotTakenForNumbers() throws BridgeException {
        listen(2400, "31 32 33 34 35 31 31 32 31 0D 0A");
        assertEquals(List.of(), heard.lines());
        assertTrue(audition.isFound() || audition.question().isPresent());
    }

    @Test
    void aMeterOnHoldIsFoundAndSaid() throws BridgeException {
        found(2400, "15 23 3F 4F 5D 60 75 85 9B A0 B0 C1 D4 E0");
        assertEquals("the meter is on HOLD: press HOLD again", heard.details().get(0));
        assertEquals(
                1, heard.details().stream().filter(it -> it.contains("HOLD")).count(), "said once, not in every frame");
        assertFalse(heard.readings().stream()
                .anyMatch(reading -> reading.condition().hasValue()));
    }

    private List<String> found(int baud, String hex) throws BridgeException {
        InstrumentSource source = listen(baud, hex);
        assertTrue(audition.isFound());
        for (int i = 0; i < 20; i++) {
            source.poll(SECOND / 10, heard);
        }
        return heard.lines().subList(0, 4);
    }

    private InstrumentSource listen(int baud, String hex) throws BridgeException {
        Instruments instruments = Instruments.create();
        List<InstrumentDescription> families = instruments.familiesHeard().stream()
                .filter(each -> each.link().baud() == baud)
                .toList();
        audition = new Audition(
                List.of(instruments.find("generic-line").decoders().create(MeterSetting.DEFAULT)),
                HeardFamilies.of(families, MeterSetting.DEFAULT),
                instruments.find("generic-scpi").decoders().create(MeterSetting.DEFAULT),
                Audition.FIRST_SILENCE_NANOS);
        for (int i = 1; i <= 6; i++) {
            carrier.bytes(i * SECOND / 4, HexFormat.ofDelimiter(" ").parseHex(hex));
        }
        InstrumentSource source = new InstrumentSource(carrier, audition, ticker);
        source.settle(10 * SECOND);
        return source;
    }
}
