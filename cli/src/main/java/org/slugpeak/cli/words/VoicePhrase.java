package org.slugpeak.cli.words;

/** What is spoken, and how written units are pronounced. Immutable; any thread may use it. */
public enum VoicePhrase implements Saying {
    THEN_NEXT,
    BACK,
    BACK_FAR,
    LESS_THAN_A_TENTH,
    ONE_TENTH,
    ONE_DECIBEL,
    TENTHS,
    DECIBELS,
    NO_VOICE,
    HANGS,
    UNIT_DB,
    UNIT_KHZ,
    UNIT_HZ,
    UNIT_MHZ,
    UNIT_V,
    UNIT_MV,
    UNIT_UV,
    UNIT_UF,
    UNIT_PF,
    UNIT_KOHM,
    UNIT_MOHM,
    UNIT_S,
    PLUS_MINUS;

    @Override
    public String kind() {
        return "voice";
    }
}
