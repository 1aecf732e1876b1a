package org.slugpeak.cli.moment;

import java.util.Optional;
import org.slugpeak.cli.words.SeekPhrase;

/**
 * Everything that is to be told of a response curve at one moment. Immutable; any thread may use it.
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
public record CurveMoment(
        String source,
        String unit,
        String point,
        double frequencyHz,
        double reading,
        String todo,
        boolean asks,
        String note,
        Optional<String> alarm) {

    static CurveMoment empty() {
        return new CurveMoment("", "", "", Double.NaN, Double.NaN, SeekPhrase.WAITING.of(), true, "", Optional.empty());
    }

    CurveMoment withSession(String newSource, String newUnit) {
        return new CurveMoment(newSource, newUnit, point, frequencyHz, reading, todo, asks, note, alarm);
    }

    CurveMoment withPoint(String newPoint, double hz, String newTodo) {
        return new CurveMoment(source, unit, newPoint, hz, reading, newTodo, false, note, alarm);
    }

    CurveMoment withReading(double newReading) {
        return new CurveMoment(source, unit, point, frequencyHz, newReading, todo, asks, note, alarm);
    }

    CurveMoment asking(String newTodo) {
        return new CurveMoment(source, unit, point, frequencyHz, reading, newTodo, true, note, alarm);
    }

    CurveMoment withNote(String newNote) {
        return new CurveMoment(source, unit, point, frequencyHz, reading, todo, asks, newNote, alarm);
    }

    CurveMoment withAlarm(Optional<String> newAlarm) {
        return new CurveMoment(source, unit, point, frequencyHz, reading, todo, asks, note, newAlarm);
    }
}
