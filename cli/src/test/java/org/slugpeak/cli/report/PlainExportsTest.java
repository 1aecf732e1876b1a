package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlainExportsTest {

    @Test
    void markdownTellsTheSameTables() {
        String text = MarkdownReport.of(List.of(Sessions.wholeJob("evening.jsonl")));
        assertTrue(text.startsWith("# Tarnfield 54A\n"), text);
        assertTrue(
                text.contains("| 0:00 | T2 top | 1 | 0.4 V | 1.014 V | 1.014 V | +8.08 dB | 0.02 dB | done |"), text);
        assertTrue(text.contains("| chassis: mains transformer |"), text);
    }

    @Test
    void markdownCellsCannotBreakOut() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.advice(0, "safety", "a | b\n# c", Double.NaN));
        assertTrue(MarkdownReport.of(List.of(teller.story(""))).contains("| a \\| b?\\# c |"));
    }

    @Test
    void csvHasOneLineForEachReading() {
        StoryTeller teller = Sessions.teller("my, log");
        teller.take(Sessions.reading(0, 0.5, 0.5));
        teller.take(Sessions.begin(0, "T1 \"top\"", 0.5));
        teller.take(Sessions.overRange(1.5));
        assertEquals("""
                seconds,value,smoothed,best,condition,adjuster,session
                0.0,0.5,0.5,0.5,ok,,"my, log"
                1.5,,1.0,1.0,over-range,"T1 ""top\""","my, log"
                """, CsvExport.of(List.of(teller.story(""))));
    }
}
