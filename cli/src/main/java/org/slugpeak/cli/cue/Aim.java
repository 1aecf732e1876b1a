package org.slugpeak.cli.cue;

/**
 * What the two steady voices are to do from now on. Immutable; any thread may use it.
 *
 * @param liveHertz pitch of the reading
 * @param live how it is let through
 * @param referenceHertz pitch of what it is compared with
 * @param reference how that is let through
 */
record Aim(double liveHertz, Gate live, double referenceHertz, Gate reference) {

    static final Aim SILENCE = new Aim(440, Gate.SHUT, 440, Gate.SHUT);

    Aim silenced() {
        return new Aim(liveHertz, Gate.SHUT, referenceHertz, Gate.SHUT);
    }
}
