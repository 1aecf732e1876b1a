package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.peak.TurnDetector.Turn;

/** A beat that was seen explains a fall that is as quick and hardly larger. */
class FallWithinASwayTest {

    private final Watched level = new Watched();
    private final TurnDetector turns = new TurnDetector(level.sight.sway);
    private final List<Turn> told = new ArrayList<>();

    /** Four percent from peak to peak, every two seconds; slow noise alone would explain three percent. */
    @ParameterizedTest
    @CsvSource({"0.04, false", "0.1, true"})
    void isNoneUnlessItGoesFarBeyond(double fall, boolean isFall) {
        level.rest(2, 1);
        level.follow(10, t -> 1 + 0.02 * Math.sin(Math.PI * t));
        turns.assumeUp(Blocks.SECONDS);
        level.by(t -> {
            Turn turn = turns.look(level.blocks.front.pyramid, level.blocks.front.noise);
            if (turn != Turn.NONE) {
                told.add(turn);
            }
        });
        level.rest(0.5, 1);
        level.rest(0.3, 1 - fall);
        level.rest(0.3, 1);
        assertEquals(isFall, told.contains(Turn.DOWN));
    }
}
