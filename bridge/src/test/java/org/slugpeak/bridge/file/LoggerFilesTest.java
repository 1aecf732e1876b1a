package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.Understanding;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.word.Refused;

/** Text files as invented loggers write them; '~' stands for a line end in the tables. */
class LoggerFilesTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Ember Fell logger 7~Serial number,12345~Interval,1~~No.,Time (s),CH1 [V]~1,0.0,1.5~2,0.5,2.5~ | 1.5 2.5 | 0 0.5 | V
            Bericht vom Montag~Zeit;Spannung (mV)~0,0;12,5~0,5;13,5~ | 12.5 13.5 | 0 0.5 | mV
            Datum;Uhrzeit;U [V]~30.11.2026;10:00:00;1,5~30.11.2026;10:00:01;2,5~ | 1.5 2.5 | 0 1 | V
            `Date Time`,Volts~2026-11-30 23:59:59.5,1.5~2026-12-01 00:00:00.5,2.5~ | 1.5 2.5 | 0 1 | V
            time,V~2026-11-30T10:00:00+01:00,1.5~2026-11-30T09:00:02Z,2.5~ | 1.5 2.5 | 0 2 | V
            time,V~23:59:59,1.5~00:00:01,2.5~ | 1.5 2.5 | 0 2 | V
            time,V~11:59:59 PM,1.5~12:00:01 AM,2.5~ | 1.5 2.5 | 0 2 | V
            time,V~11/30/2026 11:59:59 PM,1.5~12/01/2026 12:00:01 AM,2.5~ | 1.5 2.5 | 0 2 | V
            Date,V~46356.5,1.5~46356.500011574074,2.5~ | 1.5 2.5 | 0 1 | V
            timestamp,V~1764500000000,1.5~1764500000250,2.5~ | 1.5 2.5 | 0 0.25 | V
            0.0 1.5~0.5 2.5~1.0 3.5~ | 1.5 2.5 3.5 | 0 0.5 1 | -
            0,0 1,5~0,5 2,5~ | 1.5 2.5 | 0 0.5 | -
            0.0;1.5~0.5;2.5~ | 1.5 2.5 | 0 0.5 | -
            0;15~1;25~ | 15 25 | 0 1 | -
            # time;volts~0;1.5~1;2.5~ | 1.5 2.5 | 0 1 | V
            n,V~1,1.5~2,2.5~ | 1.5 2.5 | 0 0.02 | V
            Messwert,Spannung~0.0,1.5 V~0.1,2.5 V~0.2,500 mV~ | 1.5 2.5 0.5 | 0 0.1 0.2 | V
            1.5V~2500mV~OL~ | 1.5 2.5 0 | 0 0.02 0.04 | V
            Zeit;U [V];Status~0,0;1,5;OK~0,5;2,5;OK~1,0;3,5;OL~ | 1.5 2.5 3.5 | 0 0.5 1 | V
            t,V,state~0,OL,OL~1,1.5,ok~2,2.5,ok~ | 0 1.5 2.5 | 0 1 2 | V
            t,level (dBV)~0,0~1,-20~ | 1 0.1 | 0 1 | V
            t,level (dBu)~0,0~1,20~ | 0.7745966692 7.745966692 | 0 1 | V
            t,level_db~0,0~1,20~ | 1 10 | 0 1 | -
            t,v~0,-6.0206 dBV~1,0 dBV~ | 0.5 1 | 0 1 | V
            seconds,range,volts~0,2,1.5~1,2,2.5~ | 1.5 2.5 | 0 1 | V
            time,temperature (C),U (V)~0,21,1.5~1,21,2.5~ | 1.5 2.5 | 0 1 | V
            ms,mV,note~0,1.5,`first, by hand`~500,2.5~ | 1.5 2.5 | 0 0.5 | mV
            `time~(s)`,`volts~(V)`~0,1.5~1,2.5~ | 1.5 2.5 | 0 1 | V
            abc,def~0.00,1.5~0.25,2.5~0.50,1.5~ | 1.5 2.5 1.5 | 0 0.25 0.5 | -
            t,V~1764057600000,1.5~1764057600500,2.5~ | 1.5 2.5 | 0 0.5 | V
            t,V~1764057600000000,1.5~1764057600500000,2.5~ | 1.5 2.5 | 0 0.5 | V
            """)
    void areUnderstood(String text, String values, String seconds, String unit) throws Exception {
        org.slugpeak.bridge.file.CsvSource source = open(text.replace('`', '"'), CsvOptions.defaults());
        assertEquals(unit.replace("-", ""), source.measurand().unit());
        Heard heard = Heard.all(source);
        assertEquals(List.of(), heard.garbled);
        assertArrayEquals(
                numbers(values),
                heard.readings.stream().mapToDouble(each -> each.value()).toArray(),
                1e-6);
        double first = heard.readings.get(0).tNanos() / 1e9;
        assertArrayEquals(
                numbers(seconds),
                heard.readings.stream()
                        .mapToDouble(each -> each.tNanos() / 1e9 - first)
                        .toArray(),
                2e-6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            seconds,left (V),right (V)~0,1,2~1,1,2~ | FILE line 2: more than one column may be the reading: 2 'left (V)', 3 'right (V)': say which with --value-column N, or with its name
            seconds,left,right~0,1,2~1,1,2~ | FILE line 2: more than one column may be the reading: 2 'left', 3 'right': say which with --value-column N, or with its name
            a1,b1,c1~0.0,0.5,7~0.5,1.0,7~1.0,1.5,7~ | FILE line 2: more than one column may be the time: 1 'a1', 2 'b1': say which with --time-column N, or none
            s;V~0;1,234~1;1,240~ | FILE: '1,234' may be 1.234 or 1234: use --decimal-comma if the comma is the decimal point, otherwise save the numbers without commas
            0,48~1,02~1,57~ | FILE line 2: '1,02' may be seconds and a reading, or the one number 1.02 with a decimal comma: use --decimal-comma for the second, or put the header line 'seconds,value' above the readings for the first
            """)
    void thatMayMeanTwoThingsAreRefusedWithBoth(String text, String message) {
        assertEquals(
                message,
                assertThrows(BadInput.class, () -> Heard.all(open(text, CsvOptions.defaults())))
                        .getMessage()
                        .replace(file().toString(), "FILE"));
    }

    @Test
    void columnsAreTakenAsTheUserSays() throws Exception {
        String text = "a,b,c~1,2,3~5,6,7~";
        CsvOptions named = CsvOptions.defaults().withColumns(Optional.of("C"), Optional.of("b"));
        assertEquals(List.of(3.0, 7.0), Heard.all(open(text, named)).values());
        assertEquals(List.of(2.0, 6.0), Heard.all(open(text, named)).seconds());
        CsvOptions numbered = CsvOptions.defaults().withColumns(Optional.of("2"), Optional.of("none"));
        assertEquals(List.of(2.0, 6.0), Heard.all(open(text, numbered)).values());
        assertEquals(List.of(0.0, 0.02), Heard.all(open(text, numbered)).seconds());
        CsvOptions wrong = CsvOptions.defaults().withColumns(Optional.of("d"), Optional.empty());
        assertEquals(
                "FILE line 2 has no column 'd' for --value-column: it has 1 'a', 2 'b', 3 'c'",
                assertThrows(BadInput.class, () -> open(text, wrong))
                        .getMessage()
                        .replace(file().toString(), "FILE"));
    }

    @Test
    void aStatedUnitHoldsWhereNoneIsTold() throws Exception {
        assertEquals(
                new Measurand("voltage", "mV"),
                open("1.5~2.5~", CsvOptions.defaults().withUnit("mV")).measurand());
        assertEquals(
                List.of(1.0, 10.0),
                Heard.all(open("0~20~", CsvOptions.defaults().withUnit("dBV"))).values());
        assertEquals(
                "FILE line 2: the file tells another unit than --unit mV: leave --unit out",
                assertThrows(
                                BadInput.class,
                                () -> open("V~1~", CsvOptions.defaults().withUnit("mV")))
                        .getMessage()
                        .replace(file().toString(), "FILE"));
        assertThrows(IllegalArgumentException.class, () -> CsvOptions.defaults().withUnit("furlongs"));
        assertThrows(Refused.class, () -> CsvOptions.knownUnit("furlongs"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "ISO-8859-1", "UTF-16LE", "UTF-16BE"})
    void anyUsualEncodingWillDo(String charset) throws Exception {
        byte[] bytes = "Zeit (\u00b5s);Pegel (\u00b5V)\r0;1,5\r1;2,5\r".getBytes(Charset.forName(charset));
        Files.write(file(), bytes);
        org.slugpeak.bridge.file.CsvSource source =
                org.slugpeak.bridge.file.CsvSource.open(file(), CsvOptions.defaults());
        assertEquals("\u00b5V", source.measurand().unit());
        assertEquals(List.of(1.5, 2.5), Heard.all(source).values());
    }

    @Test
    void whatWasUnderstoodIsSaid() throws Exception {
        assertEquals(
                Optional.of(new Understanding(
                        Understanding.Separation.SEMICOLONS,
                        true,
                        new Understanding.Column(3, Optional.of("U [mV]")),
                        Optional.of(new Understanding.Column(2, Optional.of("Zeit"))),
                        List.of(new Understanding.Column(1, Optional.of("Nr"))),
                        Understanding.Times.SECONDS,
                        "mV",
                        false,
                        List.of(
                                line(2, "1;0,5;12,5", 12.5, Condition.OK, 0.5),
                                line(3, "2;1,0;OL", 0, Condition.OVER_RANGE, 1)))),
                open("Nr;Zeit;U [mV]~1;0,5;12,5~2;1,0;OL~", CsvOptions.defaults())
                        .understanding());
    }

    private static Understanding.Line line(
            long number, String text, double value, Condition condition, double seconds) {
        return new Understanding.Line(
                number, text, new Understanding.Read(value, condition, OptionalDouble.of(seconds)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1~2~3~ | NONE | NONE",
                "0,1~1,2~2,3~ | COMMAS | SECONDS",
                "ms;V~0;1~1;2~2;3~ | SEMICOLONS | MILLISECONDS",
                "t (us);V~0;1~1;2~2;3~ | SEMICOLONS | MICROSECONDS",
                "time_ns,V~0,1~1,2~2,3~ | COMMAS | NANOSECONDS",
                "day time V~2026-11-25 07:30:00 1~2026-11-25 07:30:01 2~ | BLANKS | DATE_AND_CLOCK",
                "07:30:00,1~07:30:01,2~ | COMMAS | CLOCK",
                "45986.3125000,1~45986.3125116,2~45986.3125231,3~ | COMMAS | DAYS"
            })
    void howColumnsAndTimesWereTakenIsTold(String text, Understanding.Separation separation, Understanding.Times times)
            throws Exception {
        Understanding told = open(text, CsvOptions.defaults()).understanding().orElseThrow();
        assertEquals(separation, told.separation());
        assertEquals(times, told.times());
    }

    @Test
    void decibelsAreSaidToBeTurned() throws Exception {
        assertEquals(
                new SourceDescription.Text(Optional.of(file().toString()), "level (dBu)", "V", true),
                open("t,level (dBu)~0,0~", CsvOptions.defaults()).description());
    }

    private static double[] numbers(String text) {
        return List.of(text.split(" ", -1)).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private org.slugpeak.bridge.file.CsvSource open(String text, CsvOptions options) throws Exception {
        Files.writeString(file(), text.replace('~', '\n'), StandardCharsets.UTF_8);
        return org.slugpeak.bridge.file.CsvSource.open(file(), options);
    }

    private Path file() {
        return folder.resolve("logger.txt");
    }
}
