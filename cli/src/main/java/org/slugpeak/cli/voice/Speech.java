package org.slugpeak.cli.voice;

/** What can be spoken, and how urgent it is. Any thread may use it. */
interface Speech {

    /** Says something for the hand at once, whatever is being spoken. */
    void word(String text);

    /** Says something that a word may cut off, instead of the sentence before it. */
    void sentence(String text);

    /** Drops a sentence, spoken or waiting; a word stays. */
    void dropSentence();
}
