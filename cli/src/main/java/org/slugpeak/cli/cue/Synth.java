package org.slugpeak.cli.cue;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Makes the samples: two steady voices, and one event at a time above them. Its only clock is the number of frames it has
 * made, so the same aims and events at the same frames give the same samples. One thread at a time.
 */
final class Synth {

    private static final double LIVE_GAIN = 0.3;

    /** Weaker than the live tone, so that a beat never falls silent, wherever it stops. */
    private static final double REFERENCE_GAIN = 0.2;

    /** While an event is heard the voices stand back to this. */
    private static final double BEHIND_EVENT = 0.3;

    /** More events than this cannot be told apart any more; the oldest that waits is dropped. */
    private static final int MOST_WAITING = 3;

    private final double framesPerSecond;
    private final Voice live;
    private final Voice reference;
    private final Ramp behind;
    private final Ramp volumeRamp;
    private final Deque<Playing> events = new ArrayDeque<>();
    private double loudness = 1;
    private long frames;

    /**
     * A silent synthesiser.
     *
     * @param framesPerSecond sample rate, Hz
     */
    Synth(double framesPerSecond) {
        this.framesPerSecond = framesPerSecond;
        live = new Voice(framesPerSecond);
        reference = new Voice(framesPerSecond);
        behind = new Ramp(framesPerSecond);
        volumeRamp = new Ramp(framesPerSecond);
    }

    void aim(Aim aim) {
        live.aim(aim.liveHertz(), aim.live());
        reference.aim(aim.referenceHertz(), aim.reference());
    }

    void play(Event event) {
        if (events.size() > MOST_WAITING) {
            Playing sounding = events.removeFirst();
            events.removeFirst();
            events.addFirst(sounding);
        }
        events.addLast(new Playing(event, framesPerSecond));
    }

    /**
     * Sets how loud everything is.
     *
     * @param newVolume amplitude from 0 to 1
     */
    void volume(double newVolume) {
        // The ramp shapes its position by a cosine; the inverse makes the goal itself the level that is reached.
        loudness = Math.acos(1 - 2 * newVolume) / Math.PI;
    }

    /**
     * Makes the next samples.
     *
     * @param out takes them; each from -1 to 1
     * @param count how many, at most the length of {@code out}
     */
    void render(float[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = (float) next();
        }
        frames += count;
    }

    private double next() {
        while (!events.isEmpty() && events.getFirst().isOver()) {
            events.removeFirst();
        }
        boolean eventSounds = !events.isEmpty();
        double back = 1 - (1 - BEHIND_EVENT) * behind.towards(eventSounds ? 1 : 0);
        double voices = back * (LIVE_GAIN * live.next() + REFERENCE_GAIN * reference.next());
        double event = eventSounds ? events.getFirst().next() : 0;
        return volumeRamp.towards(loudness) * (voices + event);
    }

    boolean isPlaying() {
        return !events.isEmpty() && !events.getLast().isOver();
    }

    /** How many frames it has made: its clock. */
    long frames() {
        return frames;
    }
}
