package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.cli.page.PageState.Spot;

class LastMinuteTest {

    @Test
    void anHourOfAFastMeterLeavesAMinuteOfTenASecond() {
        LastMinute minute = new LastMinute();
        for (long i = 0; i < 3600 * 200; i++) {
            minute.add(new Spot(i * 5_000_000, i));
        }
        long lastNanos = 3600L * 200 * 5_000_000;
        assertEquals(601, minute.spots().size(), 1);
        assertTrue(minute.spots().get(0).tNanos() >= lastNanos - LastMinute.LASTS_NANOS - LastMinute.APART_NANOS);
    }
}
