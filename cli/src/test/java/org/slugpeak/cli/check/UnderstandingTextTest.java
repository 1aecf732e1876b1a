package org.slugpeak.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.Understanding;
import org.slugpeak.bridge.source.Understanding.Column;
import org.slugpeak.bridge.source.Understanding.Line;
import org.slugpeak.bridge.source.Understanding.Separation;
import org.slugpeak.bridge.source.Understanding.Times;
import org.slugpeak.core.reading.Condition;

class UnderstandingTextTest {

    private static Column column(int number, String name) {
        return new Column(number, Optional.of(name));
    }

    private static Line line(long number, String text, double value, Condition condition, OptionalDouble atSeconds) {
        return new Line(number, text, new Understanding.Read(value, condition, atSeconds));
    }

    @Test
    void aTableWithNamesTimesAndAUnit() {
        Understanding understanding = new Understanding(
                Separation.SEMICOLONS,
                true,
                column(3, "U [mV]"),
                Optional.of(column(2, "Zeit")),
                List.of(column(1, "Nr"), new Column(4, Optional.empty())),
                Times.SECONDS,
                "mV",
                false,
                List.of(
                        line(2, "1;0,5;12,5", 12.5, Condition.OK, OptionalDouble.of(0.5)),
                        line(3, "2;1,0;OL", 0, Condition.OVER_RANGE, OptionalDouble.of(1)),
                        new Line(4, "3;x;1", new Understanding.Unread("'x' is not a number"))));
        assertEquals("""
                separator         semicolons; decimal commas
                columns           reading 3 'U [mV]', time 2 'Zeit'; not used 1 'Nr', 4
                times             seconds
                unit              mV
                line 2            '1;0,5;12,5' is 12.5 mV at 0.500000 s
                line 3            '2;1,0;OL' is over-range at 1.000000 s
                line 4            '3;x;1' cannot be read: 'x' is not a number""", text(understanding));
    }

    @Test
    void oneColumnOfNumbersOfWhichNothingIsTold() {
        Understanding understanding = new Understanding(
                Separation.NONE,
                false,
                new Column(1, Optional.empty()),
                Optional.empty(),
                List.of(),
                Times.NONE,
                "",
                false,
                List.of(line(1, "1.5", 1.5, Condition.OK, OptionalDouble.empty())));
        assertEquals("""
                separator         none, one column; decimal points
                columns           reading 1
                times             none: an even rate
                unit              none told: --unit says it
                line 1            '1.5' is 1.5""", text(understanding));
    }

    @Test
    void decibelsAreSaidToBeTurned() {
        assertEquals("unit              V, turned from decibels", unit("V"));
        assertEquals("unit              ratios, turned from decibels", unit(""));
    }

    private static String unit(String unit) {
        Understanding understanding = new Understanding(
                Separation.TABS,
                false,
                column(1, "dB"),
                Optional.empty(),
                List.of(),
                Times.NONE,
                unit,
                true,
                List.of());
        return new UnderstandingText(understanding).lines().get(3);
    }

    private static String text(Understanding understanding) {
        return String.join("\n", new UnderstandingText(understanding).lines());
    }
}
