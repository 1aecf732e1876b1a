package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.session.SessionRecord;

class SimSourceTest {

    @Test
    void theSameSeedGivesTheSameSessionAndAnotherSeedAnother() throws Exception {
        List<SessionRecord> one = SimRun.of(SimSource.open("", 1, Pace.unlimited()), 600);
        assertEquals(one, SimRun.of(SimSource.open("", 1, Pace.unlimited()), 600));
        assertNotEquals(one, SimRun.of(SimSource.open("", 2, Pace.unlimited()), 600));
    }

    @Test
    void anUnknownBenchIsRefusedWithTheNamesOfTheOthers() {
        BadConfiguration refused =
                assertThrows(BadConfiguration.class, () -> SimSource.open("lathe", 1, Pace.unlimited()));
        assertTrue(refused.getMessage().contains("sim:tarnfield"), refused.getMessage());
    }
}
