package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.core.level.LevelWatch;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;
import org.slugpeak.core.peak.Seek;

/** Whatever the finder says becomes a record first, at its time and with its figures; what the level watch makes of it comes after. */
class FinderRecordsTest {

    private static final long AT = 3_000_000_000L;

    private final List<SessionRecord> records = new ArrayList<>();
    private final FinderRecords finder =
            new FinderRecords(records::add, new LevelWatch(Seek.PEAK, new LevelRecords(records::add)));

    private static Arguments of(Consumer<PeakListener> what, SessionRecord record) {
        return Arguments.of(what, record);
    }

    static Stream<Arguments> whatIsFound() {
        return Stream.of(
                of(it -> it.passed(AT, 0.5, 1, 0.2), new Passed(AT, 0.5, 1, 0.2)),
                of(it -> it.returned(AT, 0.49, 0.1), new Returned(AT, 0.49, 0.1)),
                of(it -> it.held(AT, 0.49, 0.1), new Held(AT, 0.49, 0.1)),
                of(it -> it.twoPeaks(AT, 0.5, 0.4, 3), new TwoPeaks(AT, 0.5, 0.4, 3)),
                of(it -> it.noPeak(AT, NoPeakReason.FLAT), new NoPeak(AT, NoPeakReason.FLAT)),
                of(it -> it.hint(AT, Hint.WRONG_WAY, 1), new Finding.Hinted(AT, Hint.WRONG_WAY, 1)));
    }

    @ParameterizedTest
    @MethodSource("whatIsFound")
    void saysItInOneRecord(Consumer<PeakListener> what, SessionRecord record) {
        what.accept(finder);
        assertEquals(record, records.get(0));
        assertEquals(
                List.of(record),
                records.stream().filter(Finding.class::isInstance).toList());
    }
}
