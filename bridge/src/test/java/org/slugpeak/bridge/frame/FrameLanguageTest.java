package org.slugpeak.bridge.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Checksum;
import org.slugpeak.bridge.testkit.DecoderDrive;

/** Descriptions of invented meters. */
class FrameLanguageTest {

    private static final String MINE = """
            name = "mine"
            speaks = "frame"
            [link]
            baud = 2400
            dtr = true
            [frame]
            bytes = "AA ?? ?? ?? ??"
            ask = "R"
            [frame.number]
            digits = ["1.4-7", "1.0-3", "2.4-7"]
            coding = "binary"
            [[frame.table]]
            at = "2.0-3"
            codes = { "1" = "dc volts", "2" = "ac volts milli" }
            [frame.flags]
            "3.0" = "minus"
            "3.1" = "hold"
            [frame.checksum]
            kind = "sum-8"
            to = 3
            at = "4"
            """;

    @TempDir
    Path folder;

    @Test
    void aFrameWithAChecksumIsReadAsDescribed() throws Exception {
        assertEquals(List.of("123.0"), said("AA 12 31 00"));
        assertEquals(List.of("-123.0"), said("AA 12 31 01"));
        assertEquals(List.of("garbled set-otherwise", "no-value"), said("AA 12 31 02"));
        assertEquals(List.of("garbled malformed"), said("AA 12 3F 00"));
    }

    @Test
    void aWrongChecksumIsNoReading() throws Exception {
        byte[] frame = summed("AA 12 31 00");
        for (int bit = 0; bit < frame.length * Byte.SIZE; bit++) {
            byte[] damaged = frame.clone();
            damaged[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
            assertEquals(List.of(), DecoderDrive.feed(mine(), List.of(damaged)).readings(), "bit " + bit);
        }
    }

    @Test
    void theMeterIsAskedAtOnceAndAgain() throws Exception {
        FrameDecoder decoder = mine();
        var said = DecoderDrive.feed(decoder, List.of(summed("AA 12 31 00")));
        assertEquals("R", said.sent());
        decoder.due(decoder.dueNanos().orElseThrow(), said);
        assertEquals("RR", said.sent());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            bytes = "AA ?? ?? ?? ??" | bytes = "AA ?" | 7: 'bytes' must be what each byte is, in two hexadecimal digits or question marks, for example "02 3? ?? 0D", of 256 bytes at most
            "3.0" = "minus" | "9.0" = "minus" | 16: '9.0' must be a place in the frame: a byte such as "6", a bit such as "1.3", or several such as "1.0-2 2.0-3"; the last byte is 4
            "3.0" = "minus" | "3.0" = "minos" | 16: 'minos' is no meaning; did you mean 'minus'?
            "1" = "dc volts" | "1" = "dc vlots" | 14: 'vlots' is no meaning; did you mean 'volts'?
            "2.4-7"] | "2.4-9"] | 10: '2.4-9' must be a place in the frame: a byte such as "6", a bit such as "1.3", or several such as "1.0-2 2.0-3"; the last byte is 4
            coding = "binary" | coding = "bcd" | 11: 'bcd' is not known for 'coding'; known here: ascii, binary
            kind = "sum-8" | kind = "sum-9" | 19: 'sum-9' is not known for 'kind'; did you mean 'sum-8'?
            to = 3 | to = 30 | 20: 'to' must be a whole number from 0 to 4, not 30
            dtr = true | dtr = 1 | 5: 'dtr' must be true or false, not 1
            ask = "R" | asl = "R" | 8: 'asl' is not known in [frame]; did you mean 'ask'?
            """)
    void everyMistakeIsToldWithItsLine(String right, String wrong, String message) throws Exception {
        Path file = Files.writeString(folder.resolve("mine.toml"), MINE.replace(right, wrong));
        BadConfiguration bad =
                assertThrows(BadConfiguration.class, () -> Instruments.create().find(file.toString()));
        assertEquals(message, bad.getMessage().lines().findFirst().orElseThrow().replace(file + ":", ""));
    }

    private List<String> said(String hex) throws Exception {
        return DecoderDrive.feed(mine(), List.of(summed(hex))).lines();
    }

    private FrameDecoder mine() throws Exception {
        Path file = Files.write(folder.resolve("mine.toml"), MINE.getBytes(StandardCharsets.UTF_8));
        return (FrameDecoder)
                Instruments.create().find(file.toString()).decoders().create(MeterSetting.DEFAULT);
    }

    private static byte[] summed(String hex) {
        byte[] frame = Arrays.copyOf(HexFormat.ofDelimiter(" ").parseHex(hex), 5);
        frame[4] = (byte) Checksum.SUM_8.of(frame, 0, 4);
        return frame;
    }
}
