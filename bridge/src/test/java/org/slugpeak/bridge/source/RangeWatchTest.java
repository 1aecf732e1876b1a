package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RangeWatchTest {

    @Test
    void aMeterThatGoesUpARangeWritesOneDecimalLess() {
        assertEquals(List.of("0.200"), changes("0.1990", "0.1998", "0.200", "0.201"));
    }

    @Test
    void theUnitMayChangeWithTheRange() {
        assertEquals(List.of("0.2000 V"), changes("199.10 mV", "199.80 mV", "0.2000 V", "0.2010 V"));
    }

    @Test
    void anInstrumentThatLeavesOutZerosShowsNoRange() {
        assertEquals(List.of(), changes("0.25", "0.5", "0.125", "1.0", "0.3", "0.0625"));
    }

    @Test
    void anExponentShowsNoRange() {
        assertEquals(List.of(), changes("+9.99900000E-01", "+1.00100000E+00", "+9.99900000E-01"));
    }

    private static List<String> changes(String... answers) {
        RangeWatch watch = new RangeWatch();
        List<String> changed = new ArrayList<>();
        for (String each : answers) {
            if (watch.changed(MeterField.parse(each).orElseThrow())) {
                changed.add(each);
            }
        }
        return changed;
    }
}
