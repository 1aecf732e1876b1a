package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.receiver.Fault;

/** A few seeds of the table of faults; the whole of it is made by {@link FaultTable}. */
class FaultTest {

    @ParameterizedTest
    @EnumSource(Fault.class)
    void everyFaultIsToldByItsOwnMessageAndNoOther(Fault fault) throws Exception {
        assertEquals(List.of(Seeded.meantBy(fault).topic()), FaultTable.suspected(Optional.of(fault), 101));
    }

    @ParameterizedTest
    @ValueSource(longs = {101, 102})
    void aSoundSetRaisesNoSuspicion(long seed) throws Exception {
        assertEquals(List.of(), FaultTable.suspected(Optional.empty(), seed));
    }

    @ParameterizedTest
    @EnumSource(Suspicion.class)
    void thePageOfFaultsHasEveryMessageAsItIsSaid(Suspicion suspicion) throws IOException {
        Path page = Path.of(System.getProperty("slugpeak.shared"), "..", "docs", "faults.md");
        assertTrue(Files.readString(page).contains(suspicion.text()), suspicion.text());
    }
}
