package org.slugpeak.cli.cue;

import java.util.List;

/** An event that is being played. One thread at a time. */
final class Playing {

    private final List<Note> notes;
    private final double framesPerSecond;
    private final long lengthFrames;
    private long frame;

    Playing(Event event, double framesPerSecond) {
        this.framesPerSecond = framesPerSecond;
        notes = Score.of(event);
        double seconds = notes.stream().mapToDouble(Note::endSeconds).max().orElse(0);
        lengthFrames = Math.round(seconds * framesPerSecond);
    }

    boolean isOver() {
        return frame >= lengthFrames;
    }

    double next() {
        double seconds = frame++ / framesPerSecond;
        double sum = 0;
        for (Note note : notes) {
            double inside = seconds - note.startSeconds();
            if (inside >= 0 && inside < note.durationSeconds()) {
                sum += note.gain()
                        * level(note, inside)
                        * note.timbre().at(2 * Math.PI * note.hertz() * inside, inside);
            }
        }
        return sum;
    }

    private static double level(Note note, double inside) {
        double edge = Math.min(inside, note.durationSeconds() - inside);
        return Ramp.shape(Math.min(1, edge / Ramp.SECONDS));
    }
}
