package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.session.Work;

class PlainExportsTest {

    @Test
    void markdownTellsTheSameTables() {
        String text = MarkdownReport.of(List.of(Sessions.wholeJob("evening.jsonl")), Sessions.COVER);
        assertTrue(text.startsWith("<!-- slugpeak report -->\n# Tarnfield 54A\n"), text);
        assertTrue(
                text.contains("| 0:00 | T2 top | 1 | +0.00 dB | +8.08 dB | +8.08 dB | +8.08 dB | 0.02 dB |  | done |"),
                text);
        assertTrue(text.contains("| chassis: mains transformer |"), text);
    }

    @Test
    void markdownCellsCannotBreakOut() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.safety("a | b\n# c"));
        assertTrue(MarkdownReport.of(List.of(teller.story("")), Sessions.COVER).contains("| a \\| b?\\# c |"));
    }

    @Test
    void csvHasOneLineForEachReading() {
        StringWriter text = new StringWriter();
        CsvExport export = new CsvExport(text);
        export.session("my, log", Sessions.START);
        export.take(Sessions.reading(0, 0.5, 0.5));
        export.take(Sessions.begin(0, "T1 \"top\"", 0.5));
        export.take(Sessions.overRange(1.5));
        export.end();
        assertEquals("""
                seconds,value,smoothed,best,condition,adjuster,session,unit,constantGenerator,constantGeneratorUnit
                0.0,0.5,0.5,0.5,ok,,"my, log",V,-6.020599913279624,dB
                1.5,,1.0,1.0,over-range,"T1 ""top\""","my, log",V,,
                """, text.toString());
    }

    @Test
    void csvOfASessionWithoutReadingsHasItsDialErrors() {
        StringWriter text = new StringWriter();
        CsvExport export = new CsvExport(text);
        export.session("dial.jsonl", Sessions.START);
        export.take(new Work.DialNoted(0, 1.4e6, -500, true));
        export.end();
        assertEquals("signalHz,dialErrorHz,when,session\n1400000.0,-500.0,after,dial.jsonl\n", text.toString());
    }

    /** Where spreadsheets see a formula: OWASP, "CSV Injection". */
    @ParameterizedTest
    @ValueSource(strings = {"=1+2", "+1", "-1", "@SUM(A1)"})
    void noTextBecomesAFormula(String name) {
        StringWriter text = new StringWriter();
        CsvExport export = new CsvExport(text);
        export.session("a", Sessions.START);
        export.take(Sessions.begin(0, name, 0.5));
        export.take(Sessions.reading(0, -0.5, -0.5));
        export.end();
        assertTrue(text.toString().contains(",ok,'" + name + ",a,V,-6.020599913279624,dB\n"), text.toString());
        assertTrue(text.toString().contains("0.0,-0.5,"), "numbers stay numbers");
    }
}
