package org.slugpeak.cli.cue;

/** Does what the conductor asks for, in the thread that takes the records. */
interface CueTarget {

    void aim(Aim aim);

    void play(Event event);

    /** Something that must be said in words. */
    void say(String words);
}
