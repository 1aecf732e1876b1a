package org.slugpeak.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.instrument.LinkBounds;
import org.slugpeak.bridge.source.LinkReport;
import org.slugpeak.bridge.source.LinkStatistics;
import org.slugpeak.core.reading.Reading;

class LinkReportTextTest {

    private static final LinkBounds BOUNDS = new LinkBounds(
            OptionalDouble.of(12.5),
            OptionalDouble.of(0.003),
            OptionalDouble.of(47.5),
            OptionalDouble.of(0.001),
            OptionalDouble.of(55));

    /** 50 readings a second that alternate by a step, on a scale of 60 V. */
    private static LinkReport steady(double step) {
        LinkStatistics statistics = new LinkStatistics(OptionalDouble.of(60));
        for (long i = 0; i < 100; i++) {
            statistics.reading(Reading.of(i * 20_000_000, i % 2 == 0 ? -1 : -1 - step));
        }
        return statistics.report();
    }

    private static String lineOf(LinkReportText text, String name) {
        List<String> found =
                text.lines().stream().filter(line -> line.startsWith(name)).toList();
        assertEquals(1, found.size(), name);
        return found.get(0);
    }

    @Test
    void whatIsMetSaysSo() {
        LinkReportText text = new LinkReportText(steady(0.001), OptionalDouble.of(61.4), BOUNDS, "V");
        assertEquals("rate              50.00 a second; should be at least 47.50: it is", lineOf(text, "rate"));
        assertTrue(lineOf(text, "jitter").endsWith("; should be at most 1.000 ms: it is"));
        assertTrue(lineOf(text, "noise").endsWith("; should be at most 0.003000 V: it is"));
        assertTrue(lineOf(text, "effective bits").endsWith("; should be at least 12.50: it is"));
        assertEquals(
                "hum rejection     61 dB or better; should be at least 55.00 dB: it is", lineOf(text, "hum rejection"));
    }

    @Test
    void whatIsMissedStandsOut() {
        LinkReportText text = new LinkReportText(steady(0.1), OptionalDouble.of(40), BOUNDS, "V");
        assertTrue(lineOf(text, "noise").endsWith(": IT IS NOT"));
        assertTrue(lineOf(text, "effective bits").endsWith(": IT IS NOT"));
        assertTrue(lineOf(text, "hum rejection").endsWith(": IT IS NOT"));
        assertTrue(lineOf(text, "rate").endsWith(": it is"));
    }

    @Test
    void withoutBoundsNothingIsJudged() {
        LinkReportText text = new LinkReportText(steady(0.001), OptionalDouble.empty(), LinkBounds.NONE, "V");
        assertTrue(text.lines().stream().noneMatch(line -> line.contains("should be")));
        assertFalse(text.lines().stream().anyMatch(line -> line.startsWith("hum rejection")));
    }
}
