package org.slugpeak.cli.cue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What every event and gate means, in numbers, for a device elsewhere that makes the sound itself. Stateless. */
public final class ScoreSheet {

    private ScoreSheet() {}

    /**
     * One note of an event.
     *
     * @param startSeconds after the event begins
     * @param durationSeconds with both ramps
     * @param hertz pitch of the lowest partial
     * @param timbre its colour, by name
     * @param gain full scale is 1
     */
    public record Played(double startSeconds, double durationSeconds, double hertz, String timbre, double gain) {}

    /**
     * The notes of every event.
     *
     * @return by name
     */
    public static Map<String, List<Played>> events() {
        Map<String, List<Played>> events = new LinkedHashMap<>();
        for (Event event : Event.values()) {
            events.put(
                    event.name(),
                    Score.of(event).stream().map(ScoreSheet::played).collect(Collectors.toList()));
        }
        return events;
    }

    private static Played played(Note note) {
        return new Played(
                note.startSeconds(),
                note.durationSeconds(),
                note.hertz(),
                note.timbre().name(),
                note.gain());
    }

    /**
     * How each gate lets a tone through.
     *
     * @return by name: the period, and how long of it the gate is open, both in seconds
     */
    public static Map<String, List<Double>> gates() {
        Map<String, List<Double>> gates = new LinkedHashMap<>();
        for (Gate gate : Gate.values()) {
            gates.put(gate.name(), List.of(gate.periodSeconds(), gate.openSeconds()));
        }
        return gates;
    }
}
