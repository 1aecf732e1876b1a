package org.slugpeak.bridge.instrument;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.FaultyLine;
import org.slugpeak.bridge.testkit.Transcript;

/** However the bytes are cut, every decoder that comes with the tool makes the same of them; and no bytes upset it. */
class ChunkingTest {

    private final Map<String, InstrumentDescription> descriptions = new HashMap<>();

    static List<Talk> talks() throws IOException {
        return Talk.all();
    }

    @Test
    void everyLanguageThatIsRegisteredIsHeard() throws BadConfiguration, IOException {
        Set<String> heard = new TreeSet<>();
        for (Talk talk : talks()) {
            heard.add(Instruments.create().find(talk.instrument()).language());
        }
        Set<String> registered = new TreeSet<>();
        ServiceLoader.load(DecoderProvider.class).forEach(each -> registered.add(each.language()));
        assertEquals(registered, heard);
    }

    @ParameterizedTest
    @MethodSource("talks")
    void inPiecesOfAnySizeIsAsGoodAsAllAtOnce(Talk talk) throws BadConfiguration {
        List<String> expected = lines(talk, List.of(talk.bytes()));
        assertTrue(expected.size() > 1, () -> "too little comes of it: " + expected);
        for (int size : new int[] {1, 2, 3, 7, 13, 64}) {
            assertEquals(expected, lines(talk, FaultyLine.inPiecesOf(talk.bytes(), size)));
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void aCutAtAnyPlaceChangesNothing(Talk talk) throws BadConfiguration {
        List<String> expected = lines(talk, List.of(talk.bytes()));
        for (int at = 0; at <= talk.bytes().length; at++) {
            assertEquals(expected, lines(talk, FaultyLine.splitAt(talk.bytes(), at)), "cut at " + at);
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void noiseIsNeverAReadingAndUpsetsNobody(Talk talk) {
        SplittableRandom random = new SplittableRandom(talk.instrument().hashCode());
        for (int run = 0; run < 200; run++) {
            byte[] noise = FaultyLine.noise(2_000, random);
            Transcript said = assertDoesNotThrow(() -> DecoderDrive.feed(decoder(talk.instrument()), List.of(noise)));
            assertEquals(List.of(), said.readings());
        }
    }

    @ParameterizedTest
    @MethodSource("talks")
    void lostBytesNeverUpsetADecoder(Talk talk) {
        SplittableRandom random = new SplittableRandom(talk.instrument().hashCode());
        for (int run = 0; run < 1500; run++) {
            byte[] left = FaultyLine.losing(talk.bytes(), 0.05, random);
            assertDoesNotThrow(() -> DecoderDrive.feed(decoder(talk.instrument()), List.of(left)));
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

    private List<String> lines(Talk talk, List<byte[]> pieces) throws BadConfiguration {
        return DecoderDrive.feed(decoder(talk.instrument()), pieces).lines();
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
