package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.bench.Throughput;

class AllocationTest {

    /** Reading the counter may itself allocate a few bytes; a single byte a reading would be two million. */
    private static final long BYTES_OF_MEASURING = 10_000;

    @Test
    void aWarmFinderAllocatesNothingPerReading() {
        assertTrue(Throughput.allocatedOnceWarm(200) <= BYTES_OF_MEASURING);
    }
}
