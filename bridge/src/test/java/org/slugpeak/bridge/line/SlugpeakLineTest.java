package org.slugpeak.bridge.line;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Checksum;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.Transcript;
import org.slugpeak.core.reading.Measurand;

/** The examples of hardware-notes/adc-firmware/PROTOCOL.md, and what a reader must be ready for. */
class SlugpeakLineTest {

    private static final String BOOT =
            "S slugpeak-line 1 name=slugpeak-adc fw=1.0.0 unit=V scale=4.1962e-04 low=-65536 high=65408"
                    + " rate=50.000 window=0.020000 mains=50 range=1 ranges=2 rin=1.089e+07 reset=power why=boot*8F96\n";
    private static final String CHANGED =
            "S slugpeak-line 1 name=slugpeak-adc fw=1.0.0 unit=V scale=8.3923e-05 low=-65536"
                    + " high=65408 rate=200.000 window=0.020000 mains=50 range=2 ranges=2 rin=1.089e+07 reset=power why=changed*90DD\n";
    private static final String FIRST = "D 0.060000 -2364 -*334C\n";
    private static final String SECOND = "D 0.080000 -2361 -*5C8D\n";

    private final Decoder decoder = decoder();

    @Test
    void aBoardStartsAndSendsTwoReadings() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + FIRST + SECOND);
        assertEquals(2, said.readings().size());
        assertAll(
                () -> assertEquals(-0.9920, said.readings().get(0).value(), 5e-5),
                () -> assertEquals(-0.9907, said.readings().get(1).value(), 5e-5),
                () -> assertEquals(
                        20_000_000L,
                        said.readings().get(1).tNanos() - said.readings().get(0).tNanos()),
                () -> assertEquals(Measurand.DC_VOLTS, decoder.measurand()),
                () -> assertEquals("slugpeak-adc", decoder.description()),
                () -> assertEquals(
                        (65408 + 65536) * 4.1962e-4, decoder.scaleSpan().orElseThrow(), 1e-9));
    }

    @Test
    void overRangeAndAGapAreTold() {
        Transcript said = DecoderDrive.feed(
                decoder, BOOT + "D 12.345000 65011 H*295D\nD 12.365000 -65536 L*F077\nD 12.465000 118 g*A2D3\n");
        assertEquals(
                List.of("over-range", "over-range", "notice readings-skipped"),
                said.lines().subList(0, 3));
        assertEquals(0.0495, said.readings().get(2).value(), 5e-5);
    }

    @Test
    void anotherRangeIsToldAndScalesWhatFollows() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + FIRST + CHANGED + data("D 0.100000 -2364 -"));
        assertEquals("notice range-changed", said.lines().get(1));
        assertEquals(-2364 * 8.3923e-5, said.readings().get(1).value(), 1e-9);
    }

    @Test
    void aRefusedCommandIsNoDamage() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + "E rate must be 2 to 200*8525\n" + FIRST);
        assertEquals(1, said.lines().size());
    }

    @Test
    void theLeastThatAnotherBoardNeedsIsEnough() {
        Transcript said = DecoderDrive.feed(
                decoder,
                "S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F\nD 1.5 820 -*EE24\n");
        assertEquals(0.41, said.readings().get(0).value(), 1e-12);
    }

    @Test
    void damagedLinesGiveNothing() {
        Transcript said = DecoderDrive.feed(
                decoder,
                BOOT
                        + "D 0.060000 -2365 -*334C\nD 0.080000 -2361 -*5c8d\nD 0.060000 -2364 -*334CD 0.080000 -2361 -*5C8D\n");
        assertEquals(List.of("garbled checksum", "garbled checksum", "garbled checksum"), said.lines());
    }

    @Test
    void dataBeforeTheStartLineCannotBeScaledSoTheBoardIsAsked() {
        Transcript said = DecoderDrive.feed(decoder, FIRST);
        assertAll(
                () -> assertEquals(List.of(), said.lines()),
                () -> assertEquals("?\n", said.sent()),
                () -> assertFalse(decoder.settled()));
        decoder.due(decoder.dueNanos().orElseThrow(), said);
        assertEquals("?\n?\n", said.sent());
    }

    @Test
    void aRestartWhileReadingIsTold() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + SECOND + BOOT + FIRST);
        assertEquals("notice restarted", said.lines().get(1));
        assertEquals(3, said.lines().size());
    }

    @Test
    void afterTheLinkWasOpenedAgainTheOldScaleIsNotUsed() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + FIRST);
        decoder.begin(2_000_000_000, said);
        again(SECOND, 2_100_000_000, said);
        assertEquals(1, said.readings().size());
        assertTrue(decoder.settled());
    }

    /** Half a line that the plug cut off must not be joined to what comes after. */
    @Test
    void halfALineFromBeforeTheLinkWasLostIsForgotten() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + FIRST.substring(0, 9));
        decoder.begin(2_000_000_000, said);
        again(BOOT + SECOND, 2_100_000_000, said);
        assertEquals(List.of(), said.details());
        assertEquals(1, said.readings().size());
    }

    @Test
    void aBoardIsAskedAgainWhoItIsWhenTheLinkIsBack() {
        Transcript said = DecoderDrive.feed(decoder, BOOT);
        String before = said.sent();
        decoder.begin(2_000_000_000, said);
        assertEquals(before + "?\n", said.sent());
    }

    /** What stands in the log has one unit, and a best in volts says nothing of amperes. */
    @Test
    void aBoardThatReadsInAnotherUnitThanItBeganWithIsRefused() {
        Transcript said = DecoderDrive.feed(
                decoder, BOOT + FIRST + data("S slugpeak-line 1 name=x unit=A scale=1 low=0 high=1 why=boot") + SECOND);
        assertEquals("refused", said.lines().get(1));
        assertEquals(
                "the instrument now reads 'A', not 'V': start slugpeak again",
                said.details().get(0));
    }

    @Test
    void aStartLineThatLacksItsScaleIsDamageAndTheOldOneStays() {
        Transcript said = DecoderDrive.feed(
                decoder, BOOT + data("S slugpeak-line 1 name=x unit=V low=0 high=1 why=boot") + FIRST);
        assertEquals("garbled malformed", said.lines().get(0));
        assertEquals(-0.9920, said.readings().get(0).value(), 5e-5);
    }

    private void again(String text, long arrivalNanos, Transcript said) {
        byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        decoder.decode(bytes, bytes.length, arrivalNanos, said);
    }

    @Test
    void aNewerVersionIsRefused() {
        Transcript said =
                DecoderDrive.feed(decoder, data("S slugpeak-line 2 name=x unit=V scale=1 low=0 high=1 why=boot"));
        assertEquals(List.of("refused"), said.lines());
        assertEquals(
                "the instrument speaks version 2 of 'S slugpeak-line', and only version 1 is understood: use a newer slugpeak"
                        + " or an older firmware",
                said.details().get(0));
    }

    @Test
    void anUpperCaseFlagThatIsNotKnownMeansNoReading() {
        Transcript said = DecoderDrive.feed(decoder, BOOT + data("D 0.100000 5 Q") + data("D 0.120000 0 q"));
        assertEquals(List.of("no-value", "0.0"), said.lines());
    }

    private static String data(String payload) {
        return payload + "*" + Checksum.CRC_16_CCITT.of(payload) + "\n";
    }

    private static Decoder decoder() {
        try {
            return Instruments.create().find("slugpeak-adc").decoders().create(MeterSetting.DEFAULT);
        } catch (BadConfiguration e) {
            throw new AssertionError(e);
        }
    }
}
