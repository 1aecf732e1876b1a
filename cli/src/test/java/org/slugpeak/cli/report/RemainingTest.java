package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

class RemainingTest {

    private static final SessionRecord SET = Sessions.done(2, "T1 top", 1, 2, 6.02);

    private static Stream<Arguments> warnedAndPutRight() {
        return Stream.of(
                Arguments.of(new Overload(1, Overload.Cause.OVER_RANGE, Double.NaN), new OverloadCleared(2)),
                Arguments.of(new Drift(1, -0.5, "dB"), new Caution.Settled(2, 0)),
                Arguments.of(
                        new Caution.Suspected(1, Suspicion.HUM, 0.1), new Caution.NoLongerSuspected(2, Suspicion.HUM)),
                Arguments.of(new Caution.RestMissing(1), new Caution.Checked(2, CheckKind.REST, CheckFigures.of(0.1))),
                Arguments.of(new Weak(1, 8), SET),
                Arguments.of(new TwoPeaks(1, 1, 0.9, 2.4), SET),
                Arguments.of(new NoPeak(1, NoPeakReason.END_OF_TRAVEL), SET),
                Arguments.of(
                        new Link.Changed(1, Link.State.LOST, new LinkDetail.Told("unplugged")),
                        new Link.Changed(2, Link.State.RESUMED, new LinkDetail.Told(""))));
    }

    private static LogEntry line(SessionRecord record) {
        return new LogEntry(record, "some-word", "what is said of it");
    }

    @ParameterizedTest
    @MethodSource("warnedAndPutRight")
    void aWarningStandsUntilItIsPutRight(SessionRecord warned, SessionRecord putRight) {
        StoryTeller teller = Sessions.teller("a");
        teller.take(line(Sessions.begin(0, "T1 top", 1)));
        teller.take(line(warned));
        teller.take(line(warned));
        assertEquals(1, teller.story("").warnings().size(), "told once");
        teller.take(line(Sessions.begin(1, "T1 top", 1)));
        teller.take(line(putRight));
        assertEquals(List.of(), teller.story("").warnings());
    }
}
