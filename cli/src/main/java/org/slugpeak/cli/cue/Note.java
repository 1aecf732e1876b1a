package org.slugpeak.cli.cue;

/**
 * One note of an event. Immutable; any thread may use it.
 *
 * @param startSeconds after the event begins
 * @param durationSeconds with both ramps
 * @param hertz pitch of the lowest partial
 * @param timbre its colour
 * @param gain full scale is 1
 */
record Note(double startSeconds, double durationSeconds, double hertz, Timbre timbre, double gain) {

    double endSeconds() {
        return startSeconds + durationSeconds;
    }
}
