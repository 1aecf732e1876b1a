package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Said;

/** Notes and instructions share one type of record, and are never taken for each other. */
class MarkLineTest {

    private static void roundTrip(Instruction instruction, String text) {
        Said.Command command = new Said.Command(7, instruction);
        assertEquals(new MarkLine(7, text), MarkLine.of(command));
        assertEquals(command, MarkLine.of(command).said());
    }

    @ParameterizedTest
    @EnumSource(CheckKind.class)
    void everyCheckHasItsText(CheckKind kind) {
        roundTrip(new Instruction.Level(LevelCommand.check(kind)), "level: check " + kind.code());
    }

    @ParameterizedTest
    @EnumSource(MeterPoint.class)
    void everyMeterPointToo(MeterPoint point) {
        roundTrip(new Instruction.Level(LevelCommand.at(point)), "level: point " + point.code());
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void andWhateverIsSought(Seek seek) {
        roundTrip(new Instruction.Find(seek), "seek: " + seek.code());
    }

    @Test
    void andTheRest() {
        roundTrip(new Instruction.Level(LevelCommand.cut(0.5)), "level: cut 0.5");
        roundTrip(new Instruction.Level(LevelCommand.skirtsAt(500)), "level: skirts-at 500.0");
        roundTrip(new Instruction.Level(LevelCommand.imageAt(1.5e7)), "level: image-at 1.5E7");
        roundTrip(new Instruction.Level(LevelCommand.below(1.5)), "level: window 1.5");
        roundTrip(new Instruction.Level(LevelCommand.done()), "level: done");
        roundTrip(new Instruction.Level(LevelCommand.cancel()), "level: cancel");
        roundTrip(new Instruction.Level(LevelCommand.repaired()), "level: repaired");
        roundTrip(new Instruction.TakeBack(), "steps: undo");
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
                "level: done now",
                "seek: gold",
                "steps: undo it"
            })
    void whateverElseIsANote(String text) {
        assertEquals(new Said.Note(7, text), new MarkLine(7, text).said());
    }

    /** For a reader that knows nothing of it an instruction begins at the first letter: it sees a note. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
                    'level: rest'       | ' level: rest'
                    'level: check rest' | ' level: check rest'
                    'level:'            | ' level:'
                    'seek: dip'         | ' seek: dip'
                    'steps: undo'       | ' steps: undo'
                    ' steps: undo'      | '  steps: undo'
                    '  level: done'     | '   level: done'
                    ' core flush'       | ' core flush'
                    'T1 level: done'    | 'T1 level: done'
                    """)
    void aNoteThatReadsLikeAnInstructionStaysANote(String note, String text) {
        Said.Note said = new Said.Note(7, note);
        assertEquals(new MarkLine(7, text), MarkLine.of(said));
        assertEquals(said, MarkLine.of(said).said());
    }
}
