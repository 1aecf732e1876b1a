package org.slugpeak.bridge.log;

import java.util.Optional;
import java.util.regex.Pattern;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/**
 * How notes and instructions stand in a log: both are marks, told apart by how their text begins. A note that would be taken for an
 * instruction is written with one space before it, and a space before such a text is taken off again when it is read. Readers that
 * do not know this, those of earlier releases, see a note: for them, too, an instruction begins at the first letter. A field of
 * its own would not do, since they would ignore it and obey. Immutable.
 *
 * @param tNanos when
 * @param text as it stands in the log
 */
record MarkLine(long tNanos, String text) {

    private static final String LEVEL = "level: ";
    private static final String SEEK = "seek: ";
    private static final String TAKE_BACK = "steps: undo";
    private static final Pattern LIKE_AN_INSTRUCTION = Pattern.compile(" *(level|seek|steps):");

    static MarkLine of(Said.Note note) {
        boolean misleads = LIKE_AN_INSTRUCTION.matcher(note.text()).lookingAt();
        return new MarkLine(note.tNanos(), misleads ? " " + note.text() : note.text());
    }

    static MarkLine of(Said.Command command) {
        return new MarkLine(command.tNanos(), text(command.instruction()));
    }

    /** An instruction as it is written. */
    private static String text(Instruction instruction) {
        return instruction.match(new Instruction.Matcher<>() {
            @Override
            public String level(Instruction.Level it) {
                String word = LEVEL + Coded.of(it.command().verb());
                return it.command().detail().isEmpty()
                        ? word
                        : word + " " + it.command().detail();
            }

            @Override
            public String find(Instruction.Find it) {
                return SEEK + it.seek().code();
            }

            @Override
            public String takeBack(Instruction.TakeBack it) {
                return TAKE_BACK;
            }
        });
    }

    /** What was said; an instruction that cannot be understood is a note. */
    Said said() {
        Optional<Instruction> instruction = instruction();
        if (instruction.isPresent()) {
            return new Said.Command(tNanos, instruction.get());
        }
        boolean marked =
                text.startsWith(" ") && LIKE_AN_INSTRUCTION.matcher(text).lookingAt();
        return new Said.Note(tNanos, marked ? text.substring(1) : text);
    }

    private Optional<Instruction> instruction() {
        if (text.equals(TAKE_BACK)) {
            return Optional.of(new Instruction.TakeBack());
        }
        for (Seek seek : Seek.values()) {
            if (text.equals(SEEK + seek.code())) {
                return Optional.of(new Instruction.Find(seek));
            }
        }
        return text.startsWith(LEVEL) ? level(text.substring(LEVEL.length()).split(" ", 2)) : Optional.empty();
    }

    private static Optional<Instruction> level(String[] words) {
        String detail = words.length > 1 ? words[1] : "";
        for (LevelCommand.Verb verb : LevelCommand.Verb.values()) {
            if (Coded.of(verb).equals(words[0]) && isSound(verb, detail)) {
                return Optional.of(new Instruction.Level(new LevelCommand(verb, detail)));
            }
        }
        return Optional.empty();
    }

    private static boolean isSound(LevelCommand.Verb verb, String detail) {
        try {
            return switch (verb) {
                case POINT -> MeterPoint.ofCode(detail).code().equals(detail);
                case CHECK -> Coded.find(CheckKind.class, detail).isPresent();
                case CUT, TURNED, SKIRTS_AT, IMAGE_AT, WINDOW -> Double.parseDouble(detail) > 0;
                case DONE, CANCEL, REPAIRED, TURNING, AWAY -> detail.isEmpty();
            };
        } catch (Refused | NumberFormatException e) {
            return false;
        }
    }
}
