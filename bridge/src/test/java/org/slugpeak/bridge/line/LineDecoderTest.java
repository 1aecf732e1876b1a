package org.slugpeak.bridge.line;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.instrument.Instruments;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Checksum;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.testkit.DecoderDrive;
import org.slugpeak.bridge.testkit.Transcript;
import org.slugpeak.core.reading.Measurand;

class LineDecoderTest {

    @TempDir
    Path folder;

    @Nested
    class OneNumberALine {

        @Test
        void theFirstLineMayBeTheTailOfOneAndIsNoReading() throws BadConfiguration {
            assertEquals(
                    List.of("2.5", "3.5"),
                    said("generic-line", "1.5\n2.5\n3.5\n").lines());
        }

        @Test
        void theUnitIsTakenFromTheLine() throws BadConfiguration {
            Decoder decoder = decoder("generic-line");
            assertFalse(decoder.settled());
            DecoderDrive.feed(decoder, "\n250.1 mV DC\n");
            assertAll(
                    () -> assertTrue(decoder.settled()),
                    () -> assertEquals(new Measurand("voltage", "V"), decoder.measurand()));
        }

        @Test
        void aMeterTurnedToAnotherQuantityGivesNoReading() throws BadConfiguration {
            Transcript said = said("generic-line", "\n1.5 V\n4.7 kOhm\n1.6 V\n");
            assertEquals(List.of("1.5", "garbled malformed", "1.6"), said.lines());
            assertEquals(List.of("the meter reads 'Ohm', not 'V': turn its switch back"), said.details());
        }

        @Test
        void twoNumbersInALineAreNotGuessedAt() throws BadConfiguration {
            Decoder decoder = decoder("generic-line");
            Transcript said = DecoderDrive.feed(decoder, "\n12345,1.5\n12365,1.6\n");
            assertEquals(List.of(), said.readings());
            assertEquals("an instrument that prints lines, says '12365,1.6'", decoder.description());
        }

        @Test
        void aGreetingBeforeTheFirstReadingIsNoDamageAndLaterItIs() throws BadConfiguration {
            Transcript said = said("generic-line", "\nEmber Fell CV-10\nready\n1.5\nready\n");
            assertEquals(List.of("1.5", "garbled malformed"), said.lines());
        }

        @Test
        void aBoardThatNeverSendsANumberIsFoundOut() throws BadConfiguration {
            Transcript said = said("generic-line", "\n" + "hello\n".repeat(30));
            assertEquals(
                    10,
                    said.lines().stream().filter("garbled malformed"::equals).count());
        }

        @Test
        void theReadingAtAChangeOfRangeIsMasked() throws BadConfiguration {
            Transcript said = said("generic-line", "\n0.1980 V\n0.1990 V\n0.020 V\n0.201 V\n");
            assertEquals(List.of("0.198", "0.199", "notice range-changed", "no-value", "0.201"), said.lines());
        }
    }

    @Nested
    class TimeAndValue {

        @Test
        void theInstrumentsOwnTimeStampCounts() throws BadConfiguration {
            Transcript said = said("value-and-time", "\n1000,1.5\n1020,1.6\n1041,1.7\n");
            long first = said.readings().get(0).tNanos();
            assertEquals(
                    List.of(0L, 20_000_000L, 41_000_000L),
                    said.readings().stream().map(each -> each.tNanos() - first).toList());
        }

        @Test
        void aBoardThatWasResetIsToldFromAWrap() throws BadConfiguration {
            assertEquals(
                    List.of("1.5", "notice restarted", "1.6"),
                    said("value-and-time", "\n50000,1.5\n10,1.6\n").lines());
            assertEquals(
                    List.of("1.5", "1.6"),
                    said("value-and-time", "\n4294967290,1.5\n10,1.6\n").lines());
        }

        @Test
        void halfALineIsTornAndABadTimeIsSaid() throws BadConfiguration {
            Transcript said = said("value-and-time", "\n10,1.5\n30\nx,1.6\n50,1.7\n");
            assertEquals(List.of("1.5", "garbled torn", "garbled malformed", "1.7"), said.lines());
        }
    }

    @Nested
    class CountsWithAChecksum {

        @Test
        void countsBecomeVoltsAndTheTopOfTheScaleIsAnOverload() throws BadConfiguration {
            Transcript said = said("template", line("A,1000,512") + line("A,2000,1023"));
            assertEquals(List.of("2.5", "4.9951171875 full-scale"), said.lines());
        }

        @Test
        void theFirstLineCountsIfItsChecksumIsRightAndIsNoDamageIfItIsWrong() throws BadConfiguration {
            assertEquals(List.of("2.5"), said("template", line("A,1000,512")).lines());
            assertEquals(
                    List.of("2.5"),
                    said("template", "00,512*11\n" + line("A,1000,512")).lines());
        }

        @Test
        void aWrongChecksumIsCounted() throws BadConfiguration {
            Transcript said = said("template", line("A,1000,512") + "A,2000,513*00\n");
            assertEquals(List.of("2.5", "garbled checksum"), said.lines());
        }

        @Test
        void scaleSpanIsThatOfTheConverter() throws BadConfiguration {
            assertEquals(1023 * 0.0048828125, decoder("template").scaleSpan().orElseThrow());
        }

        private String line(String payload) {
            return payload + "*" + Checksum.XOR.of(payload) + "\n";
        }
    }

    @Nested
    class AskedByAWord {

        private static final String METER = """
                name = "asked"
                speaks = "line"
                [line]
                ask = "V?"
                ask-interval-ms = 100
                line-end = "crlf"
                unit = "V"
                """;

        @Test
        void isAskedAgainAfterEachReadingAndAfterASilence() throws IOException, BadConfiguration {
            Decoder decoder = described(METER);
            Transcript said = DecoderDrive.feed(decoder, "\n1.5\n");
            assertEquals("V?\r\n", said.sent());
            assertEquals(OptionalLong.of(1_100_000_000), decoder.dueNanos());
            decoder.due(1_100_000_000, said);
            assertEquals("V?\r\nV?\r\n", said.sent());
            assertEquals(OptionalLong.of(2_100_000_000), decoder.dueNanos(), "a second of silence is enough");
        }
    }

    @Test
    void bothEndsOfABipolarScaleAreOverloads() throws IOException, BadConfiguration {
        Decoder decoder = described("""
                name = "bipolar"
                speaks = "line"
                [line]
                unit = "V"
                scale = 0.001
                offset = 0.5
                full-scale-counts = 2047
                lowest-counts = -2048
                """);
        Transcript said = DecoderDrive.feed(decoder, "\n0\n-2048\n2047\n");
        assertEquals(
                List.of("0.5", String.format(Locale.ROOT, "%.3f full-scale", -1.548), "2.547 full-scale"),
                said.lines());
    }

    private Decoder described(String toml) throws IOException, BadConfiguration {
        Path file = folder.resolve("mine.toml");
        Files.writeString(file, toml);
        return decoder(file.toString());
    }

    private static Transcript said(String name, String text) throws BadConfiguration {
        return DecoderDrive.feed(decoder(name), text);
    }

    private static Decoder decoder(String name) throws BadConfiguration {
        return Instruments.create().find(name).decoders().create(MeterSetting.DEFAULT);
    }
}
