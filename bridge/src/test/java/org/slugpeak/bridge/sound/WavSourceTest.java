package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.bridge.sound.WavBytes.sine;
import static org.slugpeak.bridge.sound.WavBytes.wav;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.LevelKind;

/** A WAV file as a meter, from its bytes to readings. */
class WavSourceTest {

    private static final double DB_HUNDREDTH = 0.00115;

    @TempDir
    private Path folder;

    private SoundSource open(WavBytes wav, SoundOptions options) throws IOException, BridgeException {
        SoundSources sources = new SoundSources(new CalibrationStore(folder.resolve("none")), () -> 0);
        return sources.openFile(wav.in(folder), options);
    }

    private Told told(WavBytes wav, SoundOptions options) throws IOException, BridgeException {
        try (SoundSource source = open(wav, options)) {
            return Told.all(source);
        }
    }

    private Told told(WavBytes wav) throws IOException, BridgeException {
        return told(wav, SoundOptions.defaults());
    }

    private String refusal(WavBytes wav) throws IOException {
        return refusal(wav.in(folder));
    }

    private String refusal(Path file) {
        SoundSources sources = new SoundSources(new CalibrationStore(folder), () -> 0);
        String message =
                String.valueOf(assertThrows(BadInput.class, () -> sources.openFile(file, SoundOptions.defaults()))
                        .getMessage());
        assertFalse(message.contains("\n"));
        assertTrue(message.startsWith(file.toString()), message);
        return message.substring(file.toString().length() + 1);
    }

    @Test
    void aToneBecomesAReadingEveryTwentyMilliseconds() throws Exception {
        Told told = told(wav().left(sine(412, 0.1, 48_000)));
        assertEquals(46, told.readings.size());
        for (int i = 0; i < told.readings.size(); i++) {
            assertEquals(100_000_000L + i * 20_000_000L, told.readings.get(i).tNanos());
        }
        assertEquals(Condition.NO_VALUE, told.readings.get(0).condition());
        for (Reading reading : told.readings.subList(1, 46)) {
            assertEquals(0.1, reading.value(), 0.1 * DB_HUNDREDTH);
            assertEquals(Condition.OK, reading.condition());
        }
        assertEquals(0, told.garbled.size());
        // 16 bits give 98.1 dB at full scale (6.02 N + 1.76), 78.1 dB at a tenth of it.
        assertEquals(2, told.remarks.size());
        Sound.Tone heard = (Sound.Tone) told.remarks.get(0);
        assertEquals(412, heard.hz(), 0.05);
        assertEquals(0.05, heard.latencySeconds(), 0.0005);
        assertEquals(16, heard.bandwidthHz(), 0.5);
        Sound.Purity purity = (Sound.Purity) told.remarks.get(1);
        assertEquals(78.1, purity.sinadDb(), 0.05);
        assertEquals(0, purity.distortion(), 0.0005);
        assertTrue(Double.isNaN(purity.humBelowDb()));
    }

    /** Four percent of the second harmonic and three of the third are five together, as squares add (IEC 60268-3, from memory). */
    @Test
    void whoMeasuresHowCleanTheToneIsIsToldFiveTimesASecond() throws Exception {
        IntToDoubleFunction tone = sine(412, 0.2, 48_000);
        IntToDoubleFunction second = sine(824, 0.2 * 0.04, 48_000);
        IntToDoubleFunction third = sine(1236, 0.2 * 0.03, 48_000);
        IntToDoubleFunction all = i -> tone.applyAsDouble(i) + second.applyAsDouble(i) + third.applyAsDouble(i);
        Told told = told(wav().left(all), SoundOptions.defaults().withEveryPurity());
        List<Sound.Purity> heard = told.remarks.stream()
                .filter(Sound.Purity.class::isInstance)
                .map(Sound.Purity.class::cast)
                .toList();
        assertTrue(heard.size() >= 4 && heard.size() <= 6, heard.size() + " in a second");
        heard.forEach(it -> assertEquals(0.05, it.distortion(), 0.001));
    }

    static Stream<WavBytes> encodings() {
        return Stream.of(
                wav().bits(16),
                wav().bits(24),
                wav().bits(32),
                wav().code(3).bits(32),
                wav().code(3).bits(64),
                wav().bits(24).extensible(),
                wav().code(3).bits(32).extensible(),
                wav().extraChunk("odd"),
                wav().rateHz(44_100),
                wav().rateHz(192_000));
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void everyPlainEncodingReadsTheSame(WavBytes wav) throws Exception {
        Told told = told(wav.frames(40_000).tone(412, 0.25));
        assertEquals(0.25, told.last().value(), 0.25 * DB_HUNDREDTH);
        assertEquals(0, told.garbled.size());
    }

    @Test
    void eightBitsReadAsWellAsEightBitsCan() throws Exception {
        Told told = told(wav().bits(8).left(sine(412, 0.25, 48_000)));
        assertEquals(0.25, told.last().value(), 0.001);
    }

    @Nested
    class Channels {

        private final WavBytes stereo =
                wav().channels(2).left(sine(412, 0.1, 48_000)).right(sine(412, 0.3, 48_000));

        @Test
        void eitherOrTheirMeanIsMeasured() throws Exception {
            SoundOptions options = SoundOptions.defaults();
            assertEquals(
                    0.1, told(stereo, options.withChannel(Channel.LEFT)).last().value(), 1e-4);
            assertEquals(
                    0.3, told(stereo, options.withChannel(Channel.RIGHT)).last().value(), 3e-4);
            assertEquals(
                    0.2, told(stereo, options.withChannel(Channel.MIX)).last().value(), 2e-4);
        }

        @Test
        void aMonoFileHasTheSameOnEither() throws Exception {
            WavBytes mono = wav().left(sine(412, 0.1, 48_000));
            assertEquals(
                    told(mono).last(),
                    told(mono, SoundOptions.defaults().withChannel(Channel.RIGHT))
                            .last());
        }
    }

    @Nested
    class Units {

        private final WavBytes tone = wav().left(sine(412, 0.5, 48_000));

        @Test
        void withoutACalibrationAReadingIsAFractionOfFullScaleAndSaysSo() throws Exception {
            try (SoundSource source = open(tone, SoundOptions.defaults())) {
                assertEquals(new Measurand("tone level", "FS"), source.measurand());
                assertEquals(
                        new SourceDescription.Audio(
                                tone.in(folder).toString(),
                                OptionalDouble.of(1),
                                48_000,
                                1,
                                16,
                                false,
                                OptionalDouble.empty()),
                        source.description());
            }
        }

        @Test
        void withOneItIsVoltsAcrossTheVoiceCoilAndTheStandardOutputIsMarked() throws Exception {
            SoundOptions options =
                    SoundOptions.defaults().withVoltsPerFullScale(0.84).withOhms(3.2);
            try (SoundSource source = open(tone, options)) {
                assertEquals(new Measurand("tone level across 3.2 ohm", "V"), source.measurand());
                Told told = Told.all(source);
                assertEquals(0.42, told.last().value(), 0.42 * DB_HUNDREDTH);
                Sound.OutputReached reached = told.remarks.stream()
                        .filter(Sound.OutputReached.class::isInstance)
                        .map(Sound.OutputReached.class::cast)
                        .findFirst()
                        .orElseThrow();
                assertEquals(50, reached.standardMilliwatts());
                assertEquals(55.1, reached.milliwatts(), 0.05);
            }
        }

        @Test
        void rmsOfASineIsTheSineOfTheSameLevel() throws Exception {
            SoundOptions options = SoundOptions.defaults()
                    .withMeter(SoundOptions.defaults().meter().withKind(LevelKind.RMS));
            assertEquals(0.5, told(tone, options).last().value(), 0.001);
        }
    }

    @Nested
    class Broken {

        @Test
        void aFileCutShortIsReadAsFarAsItGoesAndSaysSo() throws Exception {
            Told told = told(wav().left(sine(412, 0.1, 48_000)).claiming(4 * 96_000));
            assertEquals(46, told.readings.size());
            assertEquals(1, told.garbled.size());
            assertEquals("it was cut short: 1.00 s of 4.00 s are there", told.garbled.get(0));
        }

        @ParameterizedTest
        @ValueSource(longs = {0xffffffffL, 0x7ffff000L})
        void aFileFromAPipeHasNoLengthAndIsReadToItsEnd(long claimed) throws Exception {
            Told told = told(wav().left(sine(412, 0.1, 48_000)).claiming(claimed));
            assertEquals(46, told.readings.size());
            assertEquals("its head gives no length: read to the end of the file", told.garbled.get(0));
        }

        @Test
        void halfASampleAtTheEndIsLeftOut() throws Exception {
            Told told = told(wav().claiming(95_999).left(sine(412, 0.1, 48_000)));
            assertEquals("its last sample is incomplete and was left out", told.garbled.get(0));
        }

        @Test
        void samplesThatAreNoNumbersAreCounted() throws Exception {
            Told told = told(wav().code(3).bits(32).left(i -> i % 1000 == 0 ? Double.NaN : 0.1 * Math.sin(i * 0.05)));
            assertEquals("48 samples are no numbers, taken as 0", told.garbled.get(0));
        }

        @Test
        void whatCannotBeMeasuredIsRefusedInOneLineThatSaysWhatToDo() throws Exception {
            assertEquals("is compressed (Microsoft ADPCM); save it as WAV, 16-bit PCM", refusal(wav().code(2)));
            assertEquals(
                    "is compressed (mu-law); save it as WAV, 16-bit PCM",
                    refusal(wav().code(7).bits(8)));
            assertEquals("is compressed (MP3); save it as WAV, 16-bit PCM", refusal(wav().code(0x55)));
            assertEquals("is compressed (format 0x1234); save it as WAV, 16-bit PCM", refusal(wav().code(0x1234)));
            assertEquals(
                    "has samples of 40 bits; save it with 16 or 24 bits",
                    refusal(wav().bits(40).frames(0)));
            assertEquals("holds no samples", refusal(wav().frames(0)));
            assertEquals("holds 0.050 s of sound; one reading takes 0.100 s", refusal(wav().frames(2400)));
            assertEquals("has 2000 samples a second; 4000 to 400000 can be measured", refusal(wav().rateHz(2000)));
            assertEquals(
                    "contradicts itself: 2 channels of 16 bits in 3 bytes; save it again as WAV, 16-bit PCM",
                    refusal(wav().channels(2).blockAlign(3)));
            assertEquals(
                    "contradicts itself: 0 channels of 16 bits in 0 bytes; save it again as WAV, 16-bit PCM",
                    refusal(wav().channels(0)));
            assertEquals(
                    "is a RF64 file, which is not read; save it as an ordinary WAV file", refusal(wav().riff("RF64")));
            assertEquals("is not a WAV file; record or save it as WAV, 16-bit PCM", refusal(wav().riff("OggS")));
        }

        @Test
        void aFileThatIsNoneIsRefused() throws Exception {
            assertEquals("is empty", refusal(Files.write(folder.resolve("e.wav"), new byte[0])));
            assertEquals("does not exist", refusal(folder.resolve("nowhere.wav")));
            assertEquals("is a folder, not a WAV file", refusal(Files.createDirectory(folder.resolve("d.wav"))));
        }

        @Test
        void cutAtAnyByteItIsReadOrRefusedButNeverBreaks() throws Exception {
            byte[] whole =
                    wav().frames(6000).extensible().left(sine(412, 0.1, 48_000)).bytes();
            SoundSources sources = new SoundSources(new CalibrationStore(folder), () -> 0);
            int read = 0;
            for (int length = 0; length < whole.length; length = length < 120 ? length + 1 : length + 997) {
                Path file = Files.write(folder.resolve("cut.wav"), Arrays.copyOf(whole, length));
                try (SoundSource source = sources.openFile(file, SoundOptions.defaults())) {
                    Told told = Told.all(source);
                    assertEquals(1, told.garbled.size());
                    assertFalse(told.readings.isEmpty());
                    read++;
                } catch (BadInput e) {
                    assertTrue(length < 68 + 9600, String.format(Locale.ROOT, "%d: %s", length, e.getMessage()));
                }
            }
            assertTrue(read > 1);
        }
    }
}
