package org.slugpeak.cli.words;

/** What is asked of a person before and during the work. Immutable; any thread may use it. */
public enum AskPhrase implements Saying {
    NO_SUCH_ANSWER,
    COUNTER_SO_FAR,
    COUNTER_READS,
    FOUR_QUESTIONS,
    CHASSIS,
    ISOLATED,
    EARTHED,
    BLOCKING,
    DANGER,
    GO_ON,
    FACT,
    NOT_REMOVED,
    DECLINED,
    NOTHING_IS_LIVE,
    TOLD,
    VALUE,
    ONE_VALUE,
    UNDO,
    NEXT,
    AGAIN,
    SKIP,
    QUIT,
    MARK,
    ADJUSTER,
    ADJUSTMENTS,
    SUM,
    ZERO_LEFT,
    THROUGH,
    ENDED_BEFORE,
    RECORD_IN,
    NO_RECORD,
    RESUME,
    THROUGH_ALREADY,
    OUTCOME,
    YOUR_HAND;

    @Override
    public String kind() {
        return "ask";
    }
}
