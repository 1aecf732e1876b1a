package org.slugpeak.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TopSearchTest {

    @ParameterizedTest
    @ValueSource(doubles = {-9_000, -2_500, -400, 0, 700, 2_000, 8_000})
    void findsTheTopOfAParabolaWhereverItLies(double topHz) {
        TopSearch search = new TopSearch(1.91e6, 2_000);
        int steps = 0;
        for (OptionalDouble next = search.nextHz(); next.isPresent(); next = search.nextHz()) {
            double off = (next.getAsDouble() - 1.91e6 - topHz) / 5_000;
            search.take(-off * off);
            steps++;
        }
        assertEquals(1.91e6 + topHz, search.topHz(), 1e-3);
        assertTrue(steps <= 8, steps + " steps");
    }
}
