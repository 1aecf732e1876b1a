package org.slugpeak.cli.words;

/** The words on the screen. Immutable; any thread may use it. */
public enum ScreenPhrase implements Saying {
    WAIT,
    TURN,
    OTHER_WAY,
    BACK,
    STOP,
    HELD,
    TWO_PEAKS,
    NO_PEAK,
    HANDS_OFF,
    DO,
    END,
    OVER,
    NO_LINK,
    OVERLOAD,
    BEST,
    LEAST,
    ZERO,
    CLOSER,
    FURTHER,
    SET,
    SET_MARK,
    IS_SET,
    POINT_OF,
    LINK,
    LINK_DETAIL,
    NO_SCREEN,
    STEP,
    PAGE_BY_KEY,
    MORE,
    CODE_NEEDS,
    NO_KEYS;

    @Override
    public String kind() {
        return "screen";
    }
}
