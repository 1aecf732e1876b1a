package org.slugpeak.core.word;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Overload;

class CodedTest {

    static Stream<Class<?>> types() {
        return Stream.of(
                Seek.class,
                Condition.class,
                MeterPoint.class,
                CheckKind.class,
                Fault.class,
                Link.State.class,
                Adjuster.Action.class,
                Overload.Cause.class);
    }

    @ParameterizedTest
    @MethodSource("types")
    <E extends Enum<E> & Coded> void eachIsFoundByItsOwnWordAndByNoOther(Class<E> type) {
        for (E each : type.getEnumConstants()) {
            assertEquals(Optional.of(each), Coded.find(type, each.code()));
            assertEquals(Optional.empty(), Coded.find(type, each.code() + " "));
        }
        assertEquals(Optional.empty(), Coded.find(type, ""));
    }

    @ParameterizedTest
    @MethodSource("types")
    <E extends Enum<E> & Coded> void noTwoShareAWord(Class<E> type) {
        E[] all = type.getEnumConstants();
        assertEquals(all.length, Arrays.stream(all).map(Coded::code).distinct().count());
    }
}
