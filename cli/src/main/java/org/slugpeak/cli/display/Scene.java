package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.core.peak.Seek;

/**
 * Everything that can be seen at one moment. Immutable; any thread may use it.
 *
 * @param source where the readings come from, as the user gave it; empty before the session starts
 * @param unit of the readings; may be empty
 * @param seek what is turned for
 * @param adjuster name of the present adjuster; empty where there is none
 * @param level where the reading stands
 * @param verdict what to do
 * @param overload what is to be said while the reading cannot be trusted
 * @param link what is to be said while the instrument is gone or silent
 * @param toDo what the user is asked to do now
 * @param warning a fault that is suspected, or something else that stands until it is answered
 * @param note the last thing that the user should know beside the verdict
 */
record Scene(
        String source,
        String unit,
        Seek seek,
        String adjuster,
        Level level,
        Verdict verdict,
        Optional<String> overload,
        Optional<String> link,
        Optional<ToDo> toDo,
        Optional<Warning> warning,
        Optional<Note> note) {

    static Scene empty() {
        return new Scene(
                "",
                "",
                Seek.PEAK,
                "",
                Level.NONE,
                Verdict.waiting(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * A remark that fades by itself.
     *
     * @param tNanos when it was made, nanoseconds from the first reading
     * @param text one line
     */
    record Note(long tNanos, String text) {}

    Scene withSession(String newSource, String newUnit, Seek newSeek) {
        return new Scene(newSource, newUnit, newSeek, adjuster, level, verdict, overload, link, toDo, warning, note);
    }

    Scene withAdjuster(String newAdjuster) {
        return new Scene(
                source,
                unit,
                seek,
                newAdjuster,
                level.withSwing(0),
                Verdict.turn(seek),
                overload,
                link,
                toDo,
                warning,
                note);
    }

    Scene withLevel(Level newLevel) {
        return new Scene(source, unit, seek, adjuster, newLevel, verdict, overload, link, toDo, warning, note);
    }

    Scene withVerdict(Verdict newVerdict) {
        return new Scene(source, unit, seek, adjuster, level, newVerdict, overload, link, toDo, warning, note);
    }

    Scene withOverload(Optional<String> newOverload) {
        return new Scene(source, unit, seek, adjuster, level, verdict, newOverload, link, toDo, warning, note);
    }

    Scene withLink(Optional<String> newLink) {
        return new Scene(source, unit, seek, adjuster, level, verdict, overload, newLink, toDo, warning, note);
    }

    Scene withToDo(Optional<ToDo> newToDo) {
        return new Scene(source, unit, seek, adjuster, level, verdict, overload, link, newToDo, warning, note);
    }

    Scene withWarning(Optional<Warning> newWarning) {
        return new Scene(source, unit, seek, adjuster, level, verdict, overload, link, toDo, newWarning, note);
    }

    Scene withSeek(Seek newSeek) {
        return new Scene(source, unit, newSeek, adjuster, level, verdict, overload, link, toDo, warning, note);
    }

    Scene withNote(Optional<Note> newNote) {
        return new Scene(source, unit, seek, adjuster, level, verdict, overload, link, toDo, warning, newNote);
    }
}
