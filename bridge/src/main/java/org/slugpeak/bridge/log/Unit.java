package org.slugpeak.bridge.log;

/** What a field of a record counts in. Immutable. */
enum Unit {
    SECONDS("s"),
    /** The unit of the session. */
    AS_READ("unit"),
    DECIBELS("dB"),
    DECIBELS_PER_MINUTE("dB/min"),
    /** A part or a multiple of something. */
    RATIO("ratio"),
    STEPS("steps"),
    HERTZ("Hz"),
    KILOHERTZ("kHz"),
    OHM("ohm"),
    MILLIWATTS("mW"),
    VOLTS_EMF("V EMF"),
    COUNT("count"),
    /** In what another field names. */
    OTHER_FIELD("`unit`"),
    TEXT("text"),
    SENTENCE("sentence"),
    WORD("word"),
    FLAG("true, or left out"),
    /** No figure: always null. */
    NONE("none"),
    /** In the unit of the check that found it. */
    BY_CHECK("by check"),
    /** As the figure counts. */
    BY_FIGURE("by figure"),
    /** As the topic has it. */
    BY_TOPIC("by topic");

    private final String code;

    Unit(String code) {
        this.code = code;
    }

    /** As the documentation of the format has it. */
    String code() {
        return code;
    }
}
