package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.cli.words.SeekPhrase;

/**
 * Everything that can be seen of a response curve at one moment. Immutable; any thread may use it.
 *
 * @param source where the readings come from, as the user gave it
 * @param unit of the readings; may be empty
 * @param point which point is at hand, of how many; empty before the first
 * @param frequencyHz asked for now, Hz; NaN before the first
 * @param reading the last trusted one; NaN where there is none, or where it cannot be trusted
 * @param todo one sentence: what the user is to do next
 * @param asks whether that is all that matters now, because nothing is measured meanwhile
 * @param note what came of the last point
 * @param alarm what is wrong with the instrument
 */
record CurveScene(
        String source,
        String unit,
        String point,
        double frequencyHz,
        double reading,
        String todo,
        boolean asks,
        String note,
        Optional<String> alarm) {

    static CurveScene empty() {
        return new CurveScene("", "", "", Double.NaN, Double.NaN, SeekPhrase.WAITING.of(), true, "", Optional.empty());
    }

    CurveScene withSession(String newSource, String newUnit) {
        return new CurveScene(newSource, newUnit, point, frequencyHz, reading, todo, asks, note, alarm);
    }

    CurveScene withPoint(String newPoint, double hz, String newTodo) {
        return new CurveScene(source, unit, newPoint, hz, reading, newTodo, false, note, alarm);
    }

    CurveScene withReading(double newReading) {
        return new CurveScene(source, unit, point, frequencyHz, newReading, todo, asks, note, alarm);
    }

    CurveScene asking(String newTodo) {
        return new CurveScene(source, unit, point, frequencyHz, reading, newTodo, true, note, alarm);
    }

    CurveScene withNote(String newNote) {
        return new CurveScene(source, unit, point, frequencyHz, reading, todo, asks, newNote, alarm);
    }

    CurveScene withAlarm(Optional<String> newAlarm) {
        return new CurveScene(source, unit, point, frequencyHz, reading, todo, asks, note, newAlarm);
    }
}
