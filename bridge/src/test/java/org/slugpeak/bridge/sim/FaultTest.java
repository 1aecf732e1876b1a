package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.receiver.Fault;

/** A few seeds of the table of faults; the whole of it is made by {@link FaultTable}. */
class FaultTest {

    @ParameterizedTest
    @EnumSource(Fault.class)
    void everyFaultIsToldByItsOwnMessageAndNoOther(Fault fault) throws Exception {
        assertEquals(List.of(Seeded.meantBy(fault).code()), FaultTable.suspected(Optional.of(fault), 101));
    }

    @ParameterizedTest
    @ValueSource(longs = {101, 102})
    void aSoundSetRaisesNoSuspicion(long seed) throws Exception {
        assertEquals(List.of(), FaultTable.suspected(Optional.empty(), seed));
    }
}
