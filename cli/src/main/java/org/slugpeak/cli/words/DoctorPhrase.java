package org.slugpeak.cli.words;

/** What is said of the machine that slugpeak runs on. Immutable; any thread may use it. */
public enum DoctorPhrase implements Saying {
    SYSTEM,
    SYSTEM_NEVER_SEEN,
    JAVA,
    JAVA_OWN,
    JAVA_FOUND,
    TERMINAL,
    OUTPUT_SCREEN,
    OUTPUT_PIPE,
    LANGUAGE,
    STATE,
    STATE_USED,
    STATE_NEW,
    STATE_SHUT,
    PORT_YOURS,
    PORT_NOT_YOURS,
    PORT_OF_GROUP,
    SOUND_OUTPUTS,
    NO_OUTPUTS;

    @Override
    public String kind() {
        return "doctor";
    }
}
