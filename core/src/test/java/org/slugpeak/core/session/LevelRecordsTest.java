package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelListener;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.reading.Condition;

/** Whatever the level watch says becomes one record, at its time and with its figures. */
class LevelRecordsTest {

    private static final long AT = 3_000_000_000L;
    private static final CheckFigures FIGURES = CheckFigures.of(0.25);

    private static List<SessionRecord> told(Consumer<LevelListener> what) {
        List<SessionRecord> records = new ArrayList<>();
        what.accept(new LevelRecords(records::add));
        return records;
    }

    private static Arguments of(Consumer<LevelListener> what, SessionRecord record) {
        return Arguments.of(what, record);
    }

    static Stream<Arguments> whatIsSaid() {
        return Stream.of(
                of(it -> it.flattening(AT, 0.4), new Overload(AT, Overload.Cause.FLATTENING, 0.4)),
                of(it -> it.cleared(AT), new OverloadCleared(AT)),
                of(it -> it.weak(AT, 9), new Weak(AT, 9)),
                of(it -> it.drift(AT, -0.3), new Drift(AT, -0.3, "dB")),
                of(it -> it.settled(AT, 0.01), new Caution.Settled(AT, 0.01)),
                of(it -> it.suspected(AT, Suspicion.IMAGE, 2), new Caution.Suspected(AT, Suspicion.IMAGE, 2)),
                of(it -> it.noLongerSuspected(AT, Suspicion.IMAGE), new Caution.NoLongerSuspected(AT, Suspicion.IMAGE)),
                of(it -> it.widePeak(AT, 4), new Caution.WidePeak(AT, 4)),
                of(it -> it.restMissing(AT), new Caution.RestMissing(AT)),
                of(it -> it.asked(AT, CheckKind.SKIRTS, 1, 5e3, 0), new Request.Asked(AT, CheckKind.SKIRTS, 1, 5e3, 0)),
                of(it -> it.checked(AT, CheckKind.REST, FIGURES), new Caution.Checked(AT, CheckKind.REST, FIGURES)),
                of(it -> it.checkOver(AT), new Request.CheckOver(AT)),
                of(it -> it.checkDropped(AT, 25), new Request.CheckDropped(AT, 25)),
                of(it -> it.cutGenerator(AT, 0.5, 0.7), new Request.CutGenerator(AT, 0.5, 0.7)),
                of(it -> it.generatorChanged(AT, -6), new Request.GeneratorChanged(AT, -6)),
                of(it -> it.generatorUnchanged(AT), new Request.GeneratorUnchanged(AT)));
    }

    @ParameterizedTest
    @MethodSource("whatIsSaid")
    void saysItInOneRecord(Consumer<LevelListener> what, SessionRecord record) {
        assertEquals(List.of(record), told(what));
    }

    /** What a reading cannot be trusted for is what the record names as the cause. */
    @ParameterizedTest
    @EnumSource(
            value = Condition.class,
            names = {"OVER_RANGE", "FULL_SCALE", "CLIPPING"})
    void namesTheConditionThatOverloads(Condition condition) {
        List<SessionRecord> records = told(it -> it.overload(AT, condition));
        assertEquals(1, records.size());
        assertEquals(condition.code(), ((Overload) records.get(0)).cause().code());
    }
}
