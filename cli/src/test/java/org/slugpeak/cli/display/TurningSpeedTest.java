package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

class TurningSpeedTest {

    private static List<String> said(double perSecond, int readings) {
        TurningSpeed speed = new TurningSpeed();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            speed.see(Sessions.reading(i / perSecond, 1, 1, Trend.STEADY)).ifPresent(said::add);
        }
        return said;
    }

    /** Computed by turns a second = width in turns x readings a second / 10. */
    @Test
    void threeReadingsASecondFollowASeventhOfATurn() {
        assertEquals(List.of("3.0 readings/s: turn a slug at most 1/7 turn a second, a trimmer 1/44"), said(3, 100));
        assertEquals(2.35, TurningSpeed.turnsPerSecond(TurningSpeed.SLUG_WIDTH_TURNS, 50), 1e-9);
        assertEquals(0.38, TurningSpeed.turnsPerSecond(TurningSpeed.TRIMMER_WIDTH_TURNS, 50), 1e-9);
    }

    @Test
    void aFastMeterNeedsNoWarning() {
        assertEquals(List.of(), said(20, 100));
    }

    @Test
    void oneLongPauseDoesNotMakeAMeterSlow() {
        TurningSpeed speed = new TurningSpeed();
        for (int i = 0; i < 50; i++) {
            double seconds = i * 0.05 + (i > 4 ? 30 : 0);
            assertTrue(speed.see(Sessions.reading(seconds, 1, 1, Trend.STEADY)).isEmpty());
        }
    }

    @Test
    void aLinkThatWasAwayDoesNotCount() {
        TurningSpeed speed = new TurningSpeed();
        for (int i = 0; i < 20; i++) {
            assertTrue(speed.see(new Link.Changed(Sessions.seconds(i), Link.State.RESUMED, LinkDetail.NONE))
                    .isEmpty());
            assertTrue(speed.see(Sessions.reading(i, 1, 1, Trend.STEADY)).isEmpty());
        }
    }
}
