package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.Told.Word;

/** A clock that was set back by an hour: whoever hears a word finds its time among the stamps that came. */
class OnReadAxisTest {

    private static final long INTERVAL = 20_000_000;
    private static final long SET_BACK = 3_600_000_000_000L;

    private final TimeBase time = new TimeBase();
    private final Told told = new Told();
    private final OnReadAxis words = new OnReadAxis(time, told);
    private long newestNanos;

    @BeforeEach
    void setBack() {
        for (long i = 0; i < 50; i++) {
            time.accept(SET_BACK + i * INTERVAL);
        }
        for (long i = 0; i < 50; i++) {
            newestNanos = i * INTERVAL;
            time.accept(newestNanos);
        }
    }

    @Test
    void everyWordIsPassedOnAsItIsButForItsTimes() {
        long now = time.nanos();
        words.passed(now, 1, now - 5, 0.2);
        words.returned(now, 2, 0.3);
        words.held(now, 3, 0.4);
        words.twoPeaks(now, 4, 5, 0.6);
        words.noPeak(now, NoPeakReason.FLAT);
        words.hint(now, Hint.TURN_SLOWER, 7);
        assertEquals(
                List.of(
                        new Word("passed", newestNanos, 1, 0.2, newestNanos - 5),
                        new Word("returned", newestNanos, 2, 0.3, 0),
                        new Word("held", newestNanos, 3, 0.4, 0),
                        new Word("two-peaks", newestNanos, 5, 0.6, 0),
                        new Word("flat", newestNanos, Double.NaN, Double.NaN, 0),
                        new Word("turn-slower", newestNanos, 7, Double.NaN, 0)),
                told.all);
    }
}
