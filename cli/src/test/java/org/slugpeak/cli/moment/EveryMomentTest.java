package org.slugpeak.cli.moment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.testkit.EveryRecord;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** What every kind of record makes of the moment: the hand's act, its word, and what is called. */
class EveryMomentTest {

    private static MomentKeeper turning() {
        MomentKeeper keeper = new MomentKeeper();
        keeper.take(Sessions.start(Seek.PEAK));
        keeper.take(Sessions.reading(0, 0.5, 0.5, Trend.RISING));
        return keeper;
    }

    private static String after(SessionRecord record) {
        MomentKeeper keeper = turning();
        keeper.take(record);
        Moment moment = keeper.moment();
        String called = moment.called().map(it -> it.call().name()).orElse("-");
        return record.getClass().getSimpleName() + ": " + moment.act() + ", " + MomentWords.word(moment) + ", "
                + called;
    }

    /** Written down by hand from what each record means for a hand at an adjuster. */
    @Test
    void everyKindOfRecordHasTheActWordAndCallOfTheTable() throws IOException {
        String all = EveryRecord.list().stream()
                .map(EveryMomentTest::after)
                .distinct()
                .collect(Collectors.joining("\n"));
        try (InputStream table = Objects.requireNonNull(getClass().getResourceAsStream("moments.txt"))) {
            assertEquals(new String(table.readAllBytes(), StandardCharsets.UTF_8).strip(), all);
        }
    }

    static List<SessionRecord> covering() {
        return List.of(
                new Overload(Sessions.seconds(1), Overload.Cause.CLIPPING, Double.NaN),
                new Link.Changed(Sessions.seconds(1), Link.State.LOST, new LinkDetail.Told("it has gone")),
                new Request.Asked(Sessions.seconds(1), CheckKind.LEVEL, 0));
    }

    @ParameterizedTest
    @MethodSource("covering")
    void whatIsFoundBehindAnAlarmOrAQuestionCallsForNothing(SessionRecord cover) {
        MomentKeeper keeper = turning();
        keeper.take(cover);
        Moment covered = keeper.moment();
        keeper.take(new Passed(Sessions.seconds(2), 0.5, 0, 0.3));
        assertEquals(covered.act(), keeper.moment().act());
        assertEquals(covered.called(), keeper.moment().called());
    }

    @Test
    void whatComesOutFromBehindAnAlarmIsNotCalledAgain() {
        MomentKeeper keeper = turning();
        keeper.take(new Held(Sessions.seconds(1), 0.5, 0));
        keeper.take(new Overload(Sessions.seconds(2), Overload.Cause.CLIPPING, Double.NaN));
        Optional<Called> called = keeper.moment().called();
        keeper.take(new OverloadCleared(Sessions.seconds(3)));
        assertEquals(Act.HELD, keeper.moment().act());
        assertEquals(called, keeper.moment().called());
    }

    @Test
    void aRequestToCutGivesWayToWhatTheFinderSaysAndStaysAsARemark() {
        MomentKeeper keeper = turning();
        keeper.take(new Request.CutGenerator(Sessions.seconds(1), 0.5, Double.NaN));
        assertEquals("HALVE IT", MomentWords.word(keeper.moment()));
        keeper.take(new Passed(Sessions.seconds(2), 0.5, 0, 0.3));
        assertEquals(Act.BACK, keeper.moment().act());
        assertTrue(keeper.moment().note().orElseThrow().text().startsWith("halve the generator"));
    }

    @Test
    void whoIsToTurnBackIsCalledAgainForTheSameAndForNothingElse() {
        MomentKeeper keeper = turning();
        keeper.take(new Passed(Sessions.seconds(1), 0.5, 0, 0.3));
        keeper.take(new Finding.Hinted(Sessions.seconds(2), Hint.WRONG_WAY, 0.5));
        Called called = keeper.moment().called().orElseThrow();
        assertEquals(new Called(2, Sessions.seconds(2), Call.BACK), called);
    }

    @Test
    void whatKeepsComingIsCalledOnceInTenSeconds() {
        MomentKeeper keeper = turning();
        for (int second = 1; second <= 12; second++) {
            keeper.take(new NoPeak(Sessions.seconds(second), NoPeakReason.REVERSED));
        }
        assertEquals(2, keeper.moment().called().orElseThrow().number());
    }

    @Test
    void everyActHasAWordOfItsOwn() {
        Set<String> words = EnumSet.allOf(Act.class).stream().map(Act::word).collect(Collectors.toSet());
        assertEquals(Act.values().length, words.size());
        assertFalse(words.contains(""));
    }
}
