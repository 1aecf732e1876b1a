package org.slugpeak.bridge.instrument;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.FaultyLine;
import org.slugpeak.bridge.testkit.Transcript;

/** However the bytes are cut, every decoder that comes with the tool makes the same of them; and no bytes upset it. */
class ChunkingTest {

    private final Map<String, InstrumentDescription> descriptions = new HashMap<>();

    static Stream<Arguments> talks() {
        return Stream.of(
                Arguments.of("generic-line", "9\n1.25 V\r\n-0.5 V\nOL\n\nbad\n2.0 V\n"),
                Arguments.of("value-and-time", "20,1\n# hello\n40,1.5\n60,1.75\n80\n100,x\n120,OL\n"),
                Arguments.of("template", "17*00\nA,1000,512*58\nA,2000,1023*6F\nA,3000,511*00\n"),
                Arguments.of("slugpeak-adc", """
                        60 5*1234
                        S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F
                        D 1.5 820 -*EE24
                        D 1.5 821 -*EE24
                        """),
                Arguments.of(
                        "generic-scpi",
                        "EMBER FELL,BM-450,0,1.07\r\n0,\"No error\"\r\n0,\"No error\"\r\n0,\"No error\"\r\n+1.25E+00\r\n-2.5\n9.9E37\n"));
    }

    @ParameterizedTest
    @MethodSource("talks")
    void byteByByteIsAsGoodAsAllAtOnce(String name, String talk) throws BadConfiguration {
        byte[] bytes = talk.getBytes(StandardCharsets.ISO_8859_1);
        List<String> expected = DecoderDrive.feed(decoder(name), talk).lines();
        assertFalse(expected.isEmpty());
        for (int size : new int[] {1, 2, 3, 7}) {
            assertEquals(
                    expected,
                    DecoderDrive.feed(decoder(name), FaultyLine.inPiecesOf(bytes, size))
                            .lines());
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void aCutAtAnyPlaceChangesNothing(String name, String talk) throws BadConfiguration {
        byte[] bytes = talk.getBytes(StandardCharsets.ISO_8859_1);
        List<String> expected = DecoderDrive.feed(decoder(name), talk).lines();
        for (int at = 0; at <= bytes.length; at++) {
            assertEquals(
                    expected,
                    DecoderDrive.feed(decoder(name), FaultyLine.splitAt(bytes, at))
                            .lines(),
                    "cut at " + at);
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void noiseIsNeverAReadingAndUpsetsNobody(String name, String talk) throws BadConfiguration {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        for (int run = 0; run < 200; run++) {
            Decoder decoder = decoder(name);
            byte[] noise = FaultyLine.noise(2_000, random);
            Transcript said = assertDoesNotThrow(() -> DecoderDrive.feed(decoder, List.of(noise)));
            assertEquals(List.of(), said.readings());
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void lostBytesNeverUpsetADecoder(String name, String talk) throws BadConfiguration {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        byte[] bytes = talk.repeat(5).getBytes(StandardCharsets.ISO_8859_1);
        for (int run = 0; run < 300; run++) {
            Decoder decoder = decoder(name);
            byte[] left = FaultyLine.losing(bytes, 0.05, random);
            assertDoesNotThrow(() -> DecoderDrive.feed(decoder, List.of(left)));
        }
    }

    @Test
    void anyFlippedBitIsFoundByTheChecksum() throws BadConfiguration {
        String start = "S slugpeak-line 1 name=bench-meter unit=mV scale=0.5 low=0 high=4095 why=boot*B05F\n";
        byte[] data = "D 1.5 820 -*EE24\n".getBytes(StandardCharsets.US_ASCII);
        for (int bit = 0; bit < (data.length - 1) * Byte.SIZE; bit++) {
            byte[] damaged = FaultyLine.flipping(data, bit);
            Transcript said = DecoderDrive.feed(
                    decoder("slugpeak-adc"), List.of(start.getBytes(StandardCharsets.US_ASCII), damaged));
            assertTrue(said.readings().isEmpty(), "bit " + bit);
        }
    }

    private Decoder decoder(String name) throws BadConfiguration {
        InstrumentDescription found = descriptions.get(name);
        if (found == null) {
            found = Instruments.create().find(name);
            descriptions.put(name, found);
        }
        return found.decoders().create(MeterSetting.DEFAULT);
    }
}
