package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.steps.StepsBack;

class RecordFormatTest {

    @Test
    void everyRecordReadsBackToItself() throws Exception {
        SomeRecords some = new SomeRecords(20261125);
        for (int i = 0; i < 20_000; i++) {
            SessionRecord record = some.next();
            String line = line(record);
            assertEquals(Optional.of(record), read(line), line);
            assertEquals(line.length() - 1, line.indexOf('\n'), "one line a record");
            assertFalse(line.contains("NaN") || line.contains("Infinity"), line);
        }
    }

    @Test
    void whyALinkChangedIsWordedOnceAndKeepsItsWordsFromThenOn() throws Exception {
        for (SessionRecord record : List.of(
                new Link.Changed(5, Link.State.LOST, LinkDetail.Cause.PULLED),
                new Link.Broken(5, LinkNotice.RESTARTED, new LinkDetail.Board("adc", true)))) {
            String line = line(record);
            assertTrue(line.contains("\"" + new TestWords().of(record) + "\""), line);
            assertEquals(line, line(read(line).orElseThrow()));
        }
    }

    @Test
    void writesTheFieldsOfTheContract() {
        assertEquals(
                "{\"type\":\"session\",\"version\":1,\"startedAt\":\"2026-11-25T07:30:00Z\",\"source\":\"-\","
                        + "\"quantity\":\"dc voltage\",\"unit\":\"V\",\"seek\":\"dip\",\"dwell\":1.5,\"tool\":\"slugpeak 0.1.0\"}\n",
                line(new SessionStart(
                        1,
                        Instant.parse("2026-11-25T07:30:00Z"),
                        "-",
                        Measurand.DC_VOLTS,
                        new PeakSettings(Seek.DIP, Duration.ofMillis(1500)),
                        "slugpeak 0.1.0")));
        assertEquals(
                "{\"type\":\"passed\",\"t\":1.020000001,\"best\":-4.25,\"bestAt\":0.98,\"dropDb\":null}\n",
                line(new Passed(1_020_000_001, -4.25, 980_000_000, Double.NaN)));
        assertEquals(
                "{\"type\":\"passed\",\"t\":2.0,\"best\":0.87,\"bestAt\":1.0,\"dropDb\":0.1,\"stepsBack\":0.625,"
                        + "\"stepsError\":0.125,\"top\":0.875,\"topError\":null}\n",
                line(new Passed(
                        2_000_000_000,
                        0.87,
                        1_000_000_000,
                        0.1,
                        Optional.of(new StepsBack(0.625, 0.125, 0.875, Double.NaN)))));
        assertEquals(
                "{\"type\":\"reading\",\"t\":0.0,\"value\":null,\"smoothed\":null,\"best\":null,\"bestSigma\":null,"
                        + "\"ofBest\":null,\"trend\":\"steady\",\"condition\":\"over-range\"}\n",
                line(new ReadingTaken(
                        Reading.without(0, Condition.OVER_RANGE),
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        Trend.STEADY)));
    }

    @Test
    void halfASurrogatePairCostsOneLetterOnly() throws Exception {
        assertEquals(Optional.of(new Said.Note(0, "a?b")), read(line(new Said.Note(0, "a\ud800b"))));
    }

    @Test
    void fieldsAndTypesOfLaterVersionsAreIgnored() throws Exception {
        assertEquals(
                Optional.of(new Said.Note(5, "x")),
                read("{\"hue\":{\"a\":[1,{}]},\"type\":\"mark\",\"t\":5e-9,\"text\":\"x\",\"n\":1e999,\"b\":true}"));
        assertEquals(Optional.empty(), read("{\"type\":\"photo\",\"t\":1}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    hello | is not a whole JSON object
                    [1] | is not a JSON object
                    {"type":"mark","t":1.0,"te | is not a whole JSON object
                    {"type":"mark","t":1.0,"text":"x"}{} | goes on after its JSON object
                    {"t":1.0} | has no text 'type'
                    {"type":"mark","t":1.0} | has no text 'text'
                    {"type":"mark","text":"x"} | has no 't'
                    {"type":"mark","t":"1","text":"x"} | has no number 't'
                    {"type":"mark","t":1e300,"text":"x"} | has a time 't' out of range
                    {"type":"mark","t":NaN,"text":"x"} | is not a whole JSON object
                    {"type":"held","t":1,"value":1e999,"lossDb":0} | has a number 'value' beyond the range of numbers
                    {"type":"no-peak","t":1,"reason":"bored"} | has an unknown 'reason': bored
                    {"type":"link","t":1,"state":"odd","detail":""} | has a field that cannot be: no state is called 'odd'
                    {"type":"reading","t":1,"value":null,"trend":"steady","condition":"ok"} | has a field that cannot be: a reading's value must be finite, not NaN
                    """)
    void saysWhatIsWrongWithALine(String line, String problem) {
        assertEquals(problem, assertThrows(BadLine.class, () -> read(line)).getMessage());
    }

    private static String line(SessionRecord record) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new RecordWriter(out, new TestWords()).write(record);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static Optional<SessionRecord> read(String line) throws BadLine {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        return new RecordReader().read(bytes, 0, bytes.length).map(LogEntry::record);
    }
}
