package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FamilyListenerTest {

    static Stream<SessionRecord> oneOfEachFamily() {
        return Stream.of(
                new SessionEnd(1, 0, EndReason.Known.DONE),
                new Held(1, 0.5, 0),
                new OverloadCleared(1),
                new Request.CheckOver(1),
                new Work.PlanOver(1),
                new Guard.Choice(1),
                new CurveWork.CurveOver(1),
                new SheetWork.SheetOver(1),
                new Link.LowBattery(1),
                new Said.Note(1, "a note"),
                new Sound.NoTone(1),
                new Logged(1, Logged.Topic.TOLD, 0));
    }

    @Test
    void noFamilyIsLeftOutHere() {
        List<Class<?>> families = oneOfEachFamily()
                .<Class<?>>map(record -> Arrays.stream(SessionRecord.class.getPermittedSubclasses())
                        .filter(family -> family.isInstance(record))
                        .findFirst()
                        .orElseThrow())
                .toList();
        assertEquals(Arrays.asList(SessionRecord.class.getPermittedSubclasses()).size(), families.size());
        assertEquals(families.size(), families.stream().distinct().count());
    }

    /** Whoever takes and whoever only listens meet a record in the same family, once. */
    @ParameterizedTest
    @MethodSource("oneOfEachFamily")
    void hearsARecordInTheFamilyThatAMatcherMeetsItIn(SessionRecord record) {
        List<String> heard = new ArrayList<>();
        record.tellFamily(all(FamilyListener.class, heard, record));
        List<String> met = new ArrayList<>();
        Families<?> matcher = all(Families.class, met, record);
        record.matchFamily(matcher);
        assertEquals(1, heard.size());
        assertEquals(met, heard);
    }

    @ParameterizedTest
    @MethodSource("oneOfEachFamily")
    void whatIsNotHeardIsGivenToOthersByAMatcherAndPassesAListenerBy(SessionRecord record) {
        record.tellFamily(new FamilyListener() {});
        assertSame(record, record.matchFamily((Families<SessionRecord>) it -> it));
    }

    private static <T> T all(Class<T> kind, List<String> called, SessionRecord record) {
        return kind.cast(
                Proxy.newProxyInstance(kind.getClassLoader(), new Class<?>[] {kind}, (proxy, method, arguments) -> {
                    assertSame(record, arguments[0]);
                    called.add(method.getName());
                    return null;
                }));
    }
}
