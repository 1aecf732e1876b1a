package org.slugpeak.cli.moment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/** When each word stands and when it falls (docs/peak-finder.md), on hands that obey nobody: fast and slow, to and fro, with rests. */
class StandingWordTest {

    private static final int HANDS = 60;
    private static final double RATE = 50;

    private int readings;

    private void hear(long seed, MomentKeeper keeper, Consumer<SessionRecord> afterEach) {
        Analysis analysis = new Analysis(PeakSettings.defaults(), record -> {
            keeper.take(record);
            afterEach.accept(record);
        });
        SplittableRandom random = new SplittableRandom(seed);
        double noise = random.nextInt(2) == 0 ? 0.000_5 : 0.01;
        double place = random.nextDouble(-2, 2);
        long reading = 0;
        for (int stretch = 0; stretch < 8; stretch++) {
            double speed = random.nextInt(4) == 0 ? 0 : random.nextDouble(-2, 2);
            for (double end = reading + RATE * random.nextDouble(0.5, 3); reading < end; reading++) {
                place += speed / RATE;
                double volts = 1 / Math.hypot(1, place) + noise * random.nextGaussian();
                analysis.reading(Reading.of(Math.round(reading * 1e9 / RATE), volts));
            }
        }
    }

    @Test
    void otherWayNeverStandsWhileTheReadingRises() {
        for (long seed = 0; seed < HANDS; seed++) {
            MomentKeeper keeper = new MomentKeeper();
            hear(seed, keeper, record -> {
                if (record instanceof ReadingTaken taken && taken.trend() == Trend.RISING) {
                    readings++;
                    assertFalse(keeper.moment().verdict().act() == Act.OTHER_WAY, "at " + taken);
                }
            });
        }
        assertTrue(readings > 1000);
    }

    @Test
    void backStandsUntilTheLevelIsBackOrThePassIsTakenBack() {
        Set<Act> after = EnumSet.noneOf(Act.class);
        for (long seed = 0; seed < HANDS; seed++) {
            MomentKeeper keeper = new MomentKeeper();
            Act[] before = {Act.WAIT};
            hear(seed, keeper, record -> {
                Act now = keeper.moment().verdict().act();
                if (before[0] == Act.BACK && now != Act.BACK) {
                    after.add(now);
                    boolean may = record instanceof Returned || record instanceof NoPeak || record instanceof TwoPeaks;
                    assertTrue(may, now + " by " + record);
                }
                assertEquals(record instanceof Passed ? Act.BACK : now, now);
                before[0] = now;
            });
        }
        assertTrue(after.contains(Act.STOP), after.toString());
    }
}
