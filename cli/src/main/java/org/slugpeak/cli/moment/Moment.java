package org.slugpeak.cli.moment;

import java.util.Optional;
import org.slugpeak.core.peak.Seek;

/**
 * Everything that is to be told at one moment, whichever way it is told: word, sign, line and sound are all taken from here. It is made of the
 * session's records and nothing else. Immutable; any thread may use it.
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
 * @param called the last call for attention; empty before the first
 */
public record Moment(
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
        Optional<Note> note,
        Optional<Called> called) {

    static Moment empty() {
        return new Moment(
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
                Optional.empty(),
                Optional.empty());
    }

    /**
     * A remark that fades by itself.
     *
     * @param tNanos when it was made, nanoseconds from the first reading
     * @param text one line
     */
    public record Note(long tNanos, String text) {}

    /**
     * The one thing that the hand is to do now: what cannot be relied on comes first, then what is asked for, then the finder.
     *
     * @return stands beside every word, line and sound of this moment
     */
    public Act act() {
        if (link.isPresent()) {
            return Act.NO_LINK;
        }
        if (overload.isPresent()) {
            return Act.OVERLOAD;
        }
        return toDo.map(ToDo::act).orElse(verdict.act());
    }

    Moment withSession(String newSource, String newUnit, Seek newSeek) {
        return new Moment(
                newSource, newUnit, newSeek, adjuster, level, verdict, overload, link, toDo, warning, note, called);
    }

    Moment withAdjuster(String newAdjuster) {
        return new Moment(
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
                note,
                called);
    }

    Moment withLevel(Level newLevel) {
        return new Moment(source, unit, seek, adjuster, newLevel, verdict, overload, link, toDo, warning, note, called);
    }

    Moment withVerdict(Verdict newVerdict) {
        return new Moment(source, unit, seek, adjuster, level, newVerdict, overload, link, toDo, warning, note, called);
    }

    Moment withOverload(Optional<String> newOverload) {
        return new Moment(source, unit, seek, adjuster, level, verdict, newOverload, link, toDo, warning, note, called);
    }

    Moment withLink(Optional<String> newLink) {
        return new Moment(source, unit, seek, adjuster, level, verdict, overload, newLink, toDo, warning, note, called);
    }

    Moment withToDo(Optional<ToDo> newToDo) {
        return new Moment(source, unit, seek, adjuster, level, verdict, overload, link, newToDo, warning, note, called);
    }

    Moment withWarning(Optional<Warning> newWarning) {
        return new Moment(source, unit, seek, adjuster, level, verdict, overload, link, toDo, newWarning, note, called);
    }

    Moment withSeek(Seek newSeek) {
        return new Moment(source, unit, newSeek, adjuster, level, verdict, overload, link, toDo, warning, note, called);
    }

    Moment withNote(Optional<Note> newNote) {
        return new Moment(source, unit, seek, adjuster, level, verdict, overload, link, toDo, warning, newNote, called);
    }

    Moment withCall(long tNanos, Call call) {
        long number = called.map(Called::number).orElse(0L) + 1;
        return new Moment(
                source,
                unit,
                seek,
                adjuster,
                level,
                verdict,
                overload,
                link,
                toDo,
                warning,
                note,
                Optional.of(new Called(number, tNanos, call)));
    }
}
