package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelCommandTest {

    @ParameterizedTest
    @EnumSource(CheckKind.class)
    void everyCheckTravelsAsTheTextOfAMark(CheckKind kind) {
        LevelCommand command = LevelCommand.check(kind);
        assertEquals(Optional.of(command), LevelCommand.parse(command.text()));
    }

    @ParameterizedTest
    @EnumSource(MeterPoint.class)
    void everyMeterPointToo(MeterPoint point) {
        LevelCommand command = LevelCommand.at(point);
        assertEquals(Optional.of(command), LevelCommand.parse(command.text()));
    }

    @Test
    void aCutCarriesItsFactor() {
        assertEquals("level: cut 0.5", LevelCommand.cut(0.5).text());
        assertEquals(0.5, LevelCommand.parse("level: cut 0.5").orElseThrow().factor());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "level",
                "the level: rest",
                "level: ",
                "level: sing",
                "level: check",
                "level: check all",
                "level: cut",
                "level: cut zero",
                "level: cut -1",
                "level: cut 0",
                "level: point roof",
                "level: done now"
            })
    void whateverElseIsAnOrdinaryMark(String text) {
        assertTrue(LevelCommand.parse(text).isEmpty());
    }
}
