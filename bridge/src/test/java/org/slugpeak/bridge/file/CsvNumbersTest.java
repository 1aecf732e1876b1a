package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/** Numbers and times of a text file that are not plainly what they seem. */
class CsvNumbersTest {

    @TempDir
    Path folder;

    @Nested
    class NumbersThatAreNoPlainNumbers {

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "OL",
                    "ol",
                    "-OL",
                    "+O.L",
                    "0.L",
                    "OVER",
                    "Over-Range",
                    "over range",
                    "OVERLOAD",
                    "9.9E37",
                    "+9.90000000E+37",
                    "-9.9e37"
                })
        void readingsBeyondTheRangeHaveNoValue(String text) throws Exception {
            assertEquals(
                    Reading.without(20_000_000, Condition.OVER_RANGE),
                    read("1\n" + text + "\n").readings.get(1));
            assertEquals(
                    Reading.without(0, Condition.OVER_RANGE),
                    read(text + "\n").readings.get(0));
        }

        @Test
        void theScpiNotANumberIsNoValue() throws Exception {
            assertEquals(
                    Reading.without(0, Condition.NO_VALUE),
                    read("9.91E37\n").readings.get(0));
        }

        @Test
        void hugeAndSubnormalValuesAreReadAsTheyAre() throws Exception {
            assertEquals(
                    List.of(Double.MAX_VALUE, Double.MIN_VALUE, -0.0, 1e-310, 0.0),
                    read("1.7976931348623157e308\n4.9e-324\n-0\n1e-310\n1e-999\n")
                            .values());
        }
    }

    @Nested
    class DecimalCommas {

        private final CsvOptions options = CsvOptions.defaults().withDecimalComma(true);

        @Test
        void areReadWithSemicolonsOrTabs() throws Exception {
            assertEquals(
                    List.of(1.25, -0.5),
                    read("Time (ms);Volts\n0;1,25\n20;-5e-1\n", options).values());
            assertEquals(List.of(0.02), read("0,02\t1,25\n", options).seconds());
            assertEquals(List.of(1.25, 3.0), read("1,25\n3\n", options).values());
            assertEquals(List.of(1.25), read("\"0,02\",\"1,25\"\n", options).values());
        }

        @Test
        void inQuotesAreFound() throws Exception {
            assertEquals(List.of(1.25), read("\"0,02\",\"1,25\"\n").values());
        }

        @Test
        void leaveNoRoomForDecimalPoints() throws Exception {
            assertEquals(
                    List.of("line 2: '1.234' is not a number: with --decimal-comma numbers are written 1,25"),
                    read("1,25\n1.234\n", options).garbled);
        }

        @ParameterizedTest
        @ValueSource(strings = {"1,25\n1,31\n", "-1,25\n-1,31\n", "1,25\n0,99\n", "0,5\n0,48\n"})
        void thatMightBeTwoColumnsAreNotGuessedAt(String text) {
            String line = text.lines().toList().get(1);
            assertEquals(
                    "FILE line 2: '" + line + "' may be seconds and a reading, or the one number "
                            + line.replace(',', '.')
                            + " with a decimal comma: use --decimal-comma for the second, or put the header line"
                            + " 'seconds,value' above the readings for the first",
                    refusal(text));
        }

        @Test
        void areNotSuspectedUnderAHeaderLine() throws Exception {
            assertEquals(
                    List.of(512.0, 515.0, 511.0),
                    read("seconds,counts\n17,512\n17,515\n18,511\n").values());
        }
    }

    @Nested
    class TimeThatRunsBack {

        @Test
        void costsTheLine() throws Exception {
            Heard heard = read("s,V\n0.0,1\n0.1,2\n0.05,3\n0.2,4\n");
            assertEquals(List.of(1.0, 2.0, 4.0), heard.values());
            assertEquals(List.of("line 4: the time runs back"), heard.garbled);
        }

        @Test
        void standingStillIsNotRunningBack() throws Exception {
            assertEquals(List.of(1.0, 2.0, 3.0), read("s,V\n0,1\n0,2\n0.5,3\n").values());
        }

        @Test
        void goesOnFromWhereItStoodAfterTheBoardWasReset() throws Exception {
            Heard heard = read("s,V\n100,1\n101,2\n0.0,3\n0.1,4\n0.2,5\n0.3,6\n");
            assertEquals(List.of(1.0, 2.0, 5.0, 6.0), heard.values());
            assertEquals(List.of(100.0, 101.0, 101.0, 101.1), heard.seconds());
            assertEquals(List.of("resumed: times again at 6"), heard.links);
            assertEquals(2, heard.garbled.size());
        }

        @Test
        void oneWildTimeDoesNotSilenceTheRest() throws Exception {
            Heard heard = read("s,V\n0,1\n4e9,2\n1,3\n2,4\n3,5\n4,6\n");
            assertEquals(List.of(1.0, 2.0, 5.0, 6.0), heard.values());
        }

        @Test
        void timesAtTheEdgesOfTheRangeDoNoHarm() throws Exception {
            Heard heard = read("s,V\n4.6e9,1\n-4.6e9,2\n-4.6e9,3\n-4.6e9,4\n4.6e9,5\n-9e9,6\n9e9,7\n4.6e9,8\n");
            assertEquals(List.of(1.0, 4.0), heard.values());
        }
    }

    private Heard read(String text) throws Exception {
        return read(text, CsvOptions.defaults());
    }

    private Heard read(String text, CsvOptions options) throws Exception {
        try (CsvSource source = CsvSource.open(write(text.getBytes(StandardCharsets.UTF_8)), options)) {
            return Heard.all(source);
        }
    }

    private String refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    private String refusal(byte[] bytes) {
        return assertThrows(BadInput.class, () -> Heard.all(open(bytes)))
                .getMessage()
                .replace(file().toString(), "FILE");
    }

    private CsvSource open(byte[] bytes) throws Exception {
        return CsvSource.open(write(bytes), CsvOptions.defaults());
    }

    private Path file() {
        return folder.resolve("sweep.csv");
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(file(), bytes);
    }
}
