package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;

class CsvSourceTest {

    @TempDir
    Path folder;

    @Test
    void readsOneValueALineFiftyASecond() throws Exception {
        Heard heard = read("1.25\n1.5\n-2e-3\n");
        assertEquals(List.of(1.25, 1.5, -0.002), heard.values());
        assertEquals(List.of(0.0, 0.02, 0.04), heard.seconds());
    }

    @Test
    void readsAtTheStatedRate() throws Exception {
        Heard heard = read("1\n2\n3\n4\n", CsvOptions.defaults().withReadingsPerSecond(3));
        assertEquals(
                List.of(0L, 333_333_333L, 666_666_667L, 1_000_000_000L),
                heard.readings.stream().map(Reading::tNanos).toList());
    }

    @Test
    void readsSecondsAndValue() throws Exception {
        Heard heard = read("0.1,5\n0.30,6\n1e0,7");
        assertEquals(List.of(5.0, 6.0, 7.0), heard.values());
        assertEquals(List.of(0.1, 0.3, 1.0), heard.seconds());
    }

    @Test
    void skipsCommentsBlankLinesAndTheHeaderLine() throws Exception {
        Heard heard = read("# Tarnfield 54A, first IF\n\n  \t\nseconds,volts\n0,1\n#half way\n\n1,2\n");
        assertEquals(List.of(1.0, 2.0), heard.values());
        assertEquals(List.of(), heard.garbled);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0,1\r\n1,2\r\n",
                "0,1\r1,2\r",
                "0,1\n1,2",
                "0\t1\n1\t2\n",
                " 0 , 1 \n\"1\",\"2\"\n",
                "0,1,\n1,2,,\n",
                "+0,1.\n1,.2e1\n"
            })
    void readsEveryKindOfLineEndAndSeparator(String text) throws Exception {
        Heard heard = read(text);
        assertEquals(List.of(1.0, 2.0), heard.values());
        assertEquals(List.of(0.0, 1.0), heard.seconds());
        assertEquals(List.of(), heard.garbled);
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstLine() throws Exception {
        assertEquals(List.of(1.0), read("\ufeff1\n").values());
        assertEquals(List.of(0.004), read("\ufefftime_ms,mV\n4,1\n").seconds());
    }

    @Test
    void lineNumbersCountEveryLine() throws Exception {
        assertEquals(List.of("line 5: 'x' is not a number"), read("# a\r\n\r\nvolts\r\n1\r\nx\r\n2").garbled);
        assertEquals(List.of("line 5: 'x' is not a number"), read("# a\r\rvolts\r1\rx\r2").garbled);
    }

    @Test
    void givesTheSameInPiecesOfAnySize() throws Exception {
        byte[] text = "\ufefftime_ms,value (mV)\r\n# c\r\n0,1\r\n\r\n20,OL\r\n40,x\r\n60,-3.5e-3\r\n50,4\r\n80,5"
                .getBytes(StandardCharsets.UTF_8);
        Heard whole = pieces(text, text.length);
        assertEquals(4, whole.readings.size());
        assertEquals(2, whole.garbled.size());
        for (int size = 1; size < text.length; size++) {
            Heard heard = pieces(text, size);
            assertEquals(whole.readings, heard.readings, "pieces of " + size);
            assertEquals(whole.garbled, heard.garbled, "pieces of " + size);
        }
    }

    @Test
    void readsFilesLongerThanItsBuffer() throws Exception {
        StringBuilder text = new StringBuilder("seconds,volts\n");
        IntStream.range(0, 20_000)
                .forEach(i -> text.append(i / 50.0).append(',').append(i).append('\n'));
        Heard heard = read(text.toString());
        assertEquals(20_000, heard.readings.size());
        assertEquals(19_999.0, heard.values().get(19_999));
        assertEquals(19_999 / 50.0, heard.seconds().get(19_999));
        assertEquals(List.of(), heard.garbled);
    }

    @Nested
    class TheHeaderLine {

        @ParameterizedTest
        @org.junit.jupiter.params.provider.CsvSource(delimiter = '|', textBlock = """
                        t,v                  | 1.5
                        Time,Volts           | 1.5
                        seconds,volts        | 1.5
                        s,x                  | 1.5
                        time_s,x             | 1.5
                        "Time (s)",x         | 1.5
                        elapsed [sec],x      | 1.5
                        timestamp,x          | 1.5
                        ms,x                 | 0.0015
                        millis,x             | 0.0015
                        time_ms,x            | 0.0015
                        Time (ms),x          | 0.0015
                        elapsed time/ms,x    | 0.0015
                        time_us,x            | 0.0000015
                        time (ns),x          | 0.000000002
                        """)
        void namesTheUnitOfTime(String header, double seconds) throws Exception {
            assertEquals(List.of(seconds), read(header + "\n1.5,7\n").seconds());
        }

        @ParameterizedTest
        @org.junit.jupiter.params.provider.CsvSource(delimiter = '|', textBlock = """
                        volts                | voltage        | V
                        mV                   | voltage        | mV
                        value (mV)           | reading        | ''
                        value [dBFS]         | level          | FS
                        level_db             | level          | ''
                        AVC voltage (V)      | avc voltage    | V
                        detector_mv          | detector       | mV
                        dc_volts             | dc             | V
                        grid current (uA)    | grid current   | \u00b5A
                        counts               | reading        | counts
                        deflection (mm)      | deflection     | mm
                        value                | reading        | ''
                        slug turns           | slug turns     | ''
                        """)
        void namesTheQuantityAndUnit(String header, String quantity, String unit) throws Exception {
            Measurand expected =
                    header.equals("value (mV)") ? new Measurand("voltage", "mV") : new Measurand(quantity, unit);
            assertEquals(expected, open(header + "\n1\n").measurand());
            assertEquals(expected, open("seconds," + header + "\n0,1\n").measurand());
        }

        @Test
        void mayNameMoreColumnsThanAreNeeded() throws Exception {
            CsvSource source = open("step,time_ms,mv\n7,20,1.5\n");
            assertEquals(List.of(1.5), Heard.all(source).values());
            assertEquals(
                    List.of(1.5), read("ms,mv,note,hand\n20,1.5,good,left\n").values());
        }

        @Test
        void isNotNeeded() throws Exception {
            assertEquals(Measurand.UNKNOWN, open("1\n").measurand());
        }

        @Test
        void showsInTheDescription() throws Exception {
            Optional<String> name = Optional.of(file().toString());
            assertEquals(
                    new SourceDescription.Text(name, "AVC (V)", "V", false),
                    open("s,AVC (V)\n0,1").description());
            assertEquals(
                    new SourceDescription.Text(name, "", "", false), open("0,1").description());
        }

        @ParameterizedTest
        @org.junit.jupiter.params.provider.CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                        seconds,volts | FILE holds no readings: one reading a line, 'value' or 'seconds,value', is what it needs
                        seconds~1~2 | FILE line 2 names a time column and no column of readings: add one, for example 'seconds,volts'
                        1,2,3 | FILE line 1: more than one column may be the reading: 1, 2, 3: say which with --value-column N, or with its name
                        s;V | FILE holds no readings: one reading a line, 'value' or 'seconds,value', is what it needs
                        0,5;1.25 | FILE holds no readings, only 1 line that cannot be read (line 1: '0,5;1.25' is not a number): one reading a line, 'value' or 'seconds,value', is what it needs
                        """)
        void thatCannotBeUnderstoodIsRefused(String line, String message) {
            assertEquals(message, refusal(line.replace('~', '\n') + "\n"));
        }
    }

    @Nested
    class WhatIsNoReading {

        @ParameterizedTest
        @org.junit.jupiter.params.provider.CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                        hello | 'hello' is not a number
                        NaN | 'NaN' is not a finite number
                        -Infinity | '-Infinity' is not a finite number
                        inf | 'inf' is not a finite number
                        1e999 | '1e999' is beyond the range of numbers
                        -2e308 | '-2e308' is beyond the range of numbers
                        1.25 kOhm | '1.25 kOhm' is not a number
                        0x1F | '0x1F' is not a number
                        1.2.3 | '1.2.3' is not a number
                        "" | the reading is missing
                        1;2 | '1;2' is not a number
                        """)
        void isCountedWithItsLineNumber(String line, String problem) throws Exception {
            Heard heard = read("1\n" + line + "\n2\n");
            assertEquals(List.of(1.0, 2.0), heard.values());
            assertEquals(List.of("line 2: " + problem), heard.garbled);
        }

        @ParameterizedTest
        @org.junit.jupiter.params.provider.CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                        0.5 | 1 column where 2 are expected: for decimal commas use --decimal-comma
                        0.5, | 1 column where 2 are expected: for decimal commas use --decimal-comma
                        0,5,1,25 | 4 columns where 2 are expected: for decimal commas use --decimal-comma
                        x,1 | 'x' is not a number
                        ,1 | the time is missing
                        1e300,1 | the time is out of range
                        -0.5,1 | the time runs back
                        """)
        void norIsALineWithoutItsTime(String line, String problem) throws Exception {
            Heard heard = read("s,V\n0,1\n" + line + "\n1,2\n");
            assertEquals(List.of(1.0, 2.0), heard.values());
            assertEquals(List.of("line 3: " + problem), heard.garbled);
        }

        @Test
        void aLineThatIsTooLongIsPassedOver() throws Exception {
            for (int length : new int[] {4_097, 70_000, 200_000}) {
                Heard heard = read("1\n" + "7".repeat(length) + "\n2\n");
                assertEquals(List.of(1.0, 2.0), heard.values());
                assertEquals(List.of("line 2: longer than 4096 bytes"), heard.garbled);
            }
        }

        @Test
        void controlCharactersAreShownAsQuestionMarks() throws Exception {
            assertEquals(List.of("line 2: '1?[31m' is not a number"), read("1\n1\u001b[31m\n").garbled);
        }

        @Test
        void aLongTextIsCutInTheMessage() throws Exception {
            assertEquals(
                    List.of("line 2: '" + "x".repeat(40) + "...' is not a number"),
                    read("1\n" + "x".repeat(99)).garbled);
        }
    }

    @Nested
    class AFileThatIsNoText {

        @Test
        void emptyIsSaid() {
            String message = "FILE holds no readings: one reading a line, 'value' or 'seconds,value', is what it needs";
            assertEquals(message, refusal(""));
            assertEquals(message, refusal("\n# nothing\n\n"));
            assertEquals(message, refusal("seconds,volts\n"));
            assertEquals(message, refusal("\ufeff"));
        }

        @Test
        void proseIsSaid() {
            assertEquals(
                    "FILE holds no readings, only 2 lines that cannot be read (line 2: 'the slug is stuck' is not a"
                            + " number): one reading a line, 'value' or 'seconds,value', is what it needs",
                    refusal("Dear diary\nthe slug is stuck\nstill\n"));
        }

        @Test
        void binaryIsSaid() {
            byte[] bytes = new byte[10_000];
            new SplittableRandom(1).nextBytes(bytes);
            assertEquals(
                    "FILE is not text: give a file with one reading a line, 'value' or 'seconds,value'",
                    refusal(bytes));
            assertEquals(
                    "FILE is not text: give a file with one reading a line, 'value' or 'seconds,value'",
                    refusal("RIFF\1\2\3\4\5\6\7\b\0WAVEfmt \n"));
        }

        @ParameterizedTest
        @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "x-UTF-16LE-BOM"})
        void utf16IsNone(String charset) throws Exception {
            byte[] bytes = "seconds,\u00b5V\r\n0,1.25\r\n1,1.5\r\n".getBytes(Charset.forName(charset));
            assertEquals(List.of(1.25, 1.5), Heard.all(open(bytes)).values());
            assertEquals(new Measurand("voltage", "\u00b5V"), open(bytes).measurand());
        }

        @Test
        void aHandfulOfControlCharactersIsNotBinary() throws Exception {
            Heard heard = read("\0\0\1\n1.5\n");
            assertEquals(List.of(1.5), heard.values());
            assertEquals(List.of("line 1: holds control characters"), heard.garbled);
        }

        @Test
        void aMissingFileAndAFolderAreSaid() {
            Path gone = folder.resolve("gone.csv");
            assertEquals("there is no file " + gone + ": check the name", refusalOf(gone));
            assertEquals(folder + " is a folder: give a file with readings", refusalOf(folder));
        }
    }

    /** Whatever comes, a line is a reading, or garbled, or skipped, and times never run back. */
    @Test
    void noTextWhateverMakesItFail() throws Exception {
        SplittableRandom random = new SplittableRandom(77);
        String alphabet = "0123456789.,;+-eE \t\r\n\n\n#\"NaOLInfs\u00b5\0";
        for (int run = 0; run < 1_000; run++) {
            StringBuilder text = new StringBuilder(run % 3 == 0 ? "time_ms,mV\n0,1\n" : "");
            for (int i = random.nextInt(300); i > 0; i--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            CsvOptions options = CsvOptions.defaults().withDecimalComma(run % 2 == 0);
            Heard heard = new Heard();
            try (CsvSource source = CsvSource.open(Files.write(folder.resolve(run + ".csv"), bytes), options)) {
                heard.listenTo(source);
            } catch (BadInput e) {
                assertEquals(1, e.getMessage().lines().count(), e.getMessage());
            }
            long lines = text.toString().lines().count();
            assertTrue(heard.readings.size() + heard.garbled.size() <= lines, text.toString());
            for (int i = 1; i < heard.readings.size(); i++) {
                assertTrue(
                        heard.readings.get(i).tNanos()
                                >= heard.readings.get(i - 1).tNanos(),
                        text.toString());
            }
        }
    }

    @Test
    void statedRatesMustMakeSense() {
        for (double rate : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 2e6}) {
            assertThrows(
                    IllegalArgumentException.class, () -> CsvOptions.defaults().withReadingsPerSecond(rate));
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

    private static Heard pieces(byte[] text, int size) throws Exception {
        return Heard.all(CsvSource.standardInput(Text.inPieces(text, size), CsvOptions.defaults(), () -> 0));
    }

    private CsvSource open(String text) throws Exception {
        return CsvSource.open(write(text.getBytes(StandardCharsets.UTF_8)), CsvOptions.defaults());
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

    private static String refusalOf(Path file) {
        return assertThrows(BadInput.class, () -> CsvSource.open(file, CsvOptions.defaults()))
                .getMessage();
    }

    private Path file() {
        return folder.resolve("sweep.csv");
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(file(), bytes);
    }
}
