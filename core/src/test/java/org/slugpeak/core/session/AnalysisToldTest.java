package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;

/** What is not a reading is recorded as it was told, at the time of the last reading, and does what it says. */
class AnalysisToldTest {

    private static final long START_NANOS = 77_000_000_000L;
    private static final long STEP_NANOS = 20_000_000L;

    private final List<SessionRecord> records = new ArrayList<>();
    private final Analysis analysis = new Analysis(PeakSettings.defaults(), records::add);
    private long tNanos = START_NANOS;

    private void read(double value) {
        analysis.reading(Reading.of(tNanos, value));
        tNanos += STEP_NANOS;
    }

    private void stand(double value, double seconds) {
        for (int i = 0; i < seconds * 50; i++) {
            read(value * (1 + (i % 2 == 0 ? 1e-4 : -1e-4)));
        }
    }

    private SessionRecord last() {
        return records.get(records.size() - 1);
    }

    private <T extends SessionRecord> List<T> all(Class<T> type) {
        return records.stream().filter(type::isInstance).map(type::cast).toList();
    }

    private static SessionStart start(boolean stepped) {
        return new SessionStart(
                1, Instant.EPOCH, "-", Measurand.DC_VOLTS, PeakSettings.defaults(), "slugpeak test", stepped);
    }

    @ParameterizedTest
    @CsvSource({"false", "true"})
    void theStartIsTheFirstRecord(boolean stepped) {
        analysis.start(start(stepped));
        assertEquals(List.of(start(stepped)), records);
    }

    @Test
    void aNoteWhateverItReadsIsNoInstruction() {
        read(1);
        analysis.note("level: check rest");
        assertEquals(new Said.Note(0, "level: check rest"), last());
        stand(1, 1);
        assertEquals(List.of(), all(Request.class));
    }

    @Test
    void whatSomebodyElseTellsGetsTheTimeOfTheLastReading() {
        read(1);
        read(1);
        analysis.tell(Work.PlanOver::new);
        assertEquals(new Work.PlanOver(STEP_NANOS), last());
    }

    @Test
    void anInstructionToTheLevelWatchIsRecordedAndObeyed() {
        stand(1, 2);
        Instruction check = new Instruction.Level(LevelCommand.check(CheckKind.REST));
        analysis.command(check);
        assertEquals(new Said.Command(tNanos - START_NANOS - STEP_NANOS, check), last());
        stand(1, 2);
        assertEquals(CheckKind.REST, all(Request.Asked.class).get(0).check());
    }

    /** The level watch goes by the clock, and typed values have none. */
    @Test
    void aSteppedSessionRecordsAnInstructionToTheLevelWatchAndDoesNotObeyIt() {
        analysis.start(start(true));
        read(1);
        analysis.command(new Instruction.Level(LevelCommand.check(CheckKind.REST)));
        assertEquals(1, all(Said.Command.class).size());
        assertEquals(List.of(), all(Request.class));
    }

    @ParameterizedTest
    @EnumSource(LinkNotice.class)
    void aBreakThatTheInstrumentMadeIsRecordedAndFoundByItsWord(LinkNotice notice) {
        read(1);
        read(1);
        analysis.interrupted(notice, new LinkDetail.Told("as it says"));
        assertEquals(new Link.Broken(STEP_NANOS, notice, new LinkDetail.Told("as it says")), last());
        assertEquals(Optional.of(notice), LinkNotice.ofCode(notice.code()));
        assertEquals(Optional.empty(), LinkNotice.ofCode(notice.code() + "?"));
    }

    @ParameterizedTest
    @CsvSource({"LOST, ALARM", "STALE, ALARM", "RESUMED, NOTES"})
    void aChangeOfTheLinkCountsFromTheFirstReadingAndIsAnAlarmUnlessItIsBack(Link.State state, Manner manner) {
        analysis.link(tNanos, state, new LinkDetail.Told("before any reading"));
        assertEquals(new Link.Changed(0, state, new LinkDetail.Told("before any reading")), last());
        read(1);
        analysis.link(START_NANOS + 5 * STEP_NANOS, state, new LinkDetail.Told("later"));
        assertEquals(new Link.Changed(5 * STEP_NANOS, state, new LinkDetail.Told("later")), last());
        assertEquals(manner, last().manner());
        assertEquals(state.name().toLowerCase(Locale.ROOT), state.code());
    }

    @Test
    void readingsAreCounted() {
        assertEquals(0, analysis.readings());
        stand(1, 1);
        assertEquals(50, analysis.readings());
    }

    @ParameterizedTest
    @EnumSource(Hint.class)
    void onlyTheWordThatTurnsTheHandRoundIsAVerdict(Hint hint) {
        boolean turns = "WRONG_WAY".equals(hint.name());
        assertEquals(turns ? Manner.VERDICT : Manner.NOTES, new Finding.Hinted(0, hint, 1).manner());
    }

    @Test
    void anAdjusterThatWasNotHeldIsNotDoneByTheEnd() {
        analysis.nextAdjuster("T1");
        stand(1, 1);
        analysis.end(EndReason.Known.QUIT);
        assertEquals(1, all(Adjuster.class).size(), "begun, and that is all");
        assertTrue(last() instanceof SessionEnd);
    }

    @Test
    void theWordsOfActionsAreThese() {
        assertEquals("begin", Adjuster.Action.BEGIN.code());
        assertEquals("done", Adjuster.Action.DONE.code());
        assertEquals("skip", Adjuster.Action.SKIP.code());
    }
}
