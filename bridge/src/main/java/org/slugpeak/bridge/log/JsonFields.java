package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.json.JsonReadFeature;

/** The names of the record types and their fields, said once for writer and reader; and how JSON is written here. */
final class JsonFields {

    static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
            .disable(StreamWriteFeature.FLUSH_PASSED_TO_STREAM)
            .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .rootValueSeparator("")
            .characterEscapes(new SafeEscapes())
            .build();

    static final SerializedString TYPE = new SerializedString("type");
    static final SerializedString T = new SerializedString("t");

    static final SerializedString TYPE_SESSION = new SerializedString("session");
    static final SerializedString TYPE_PASSED = new SerializedString("passed");
    static final SerializedString TYPE_RETURNED = new SerializedString("returned");
    static final SerializedString TYPE_HELD = new SerializedString("held");
    static final SerializedString TYPE_TWO_PEAKS = new SerializedString("two-peaks");
    static final SerializedString TYPE_NO_PEAK = new SerializedString("no-peak");
    static final SerializedString TYPE_OVERLOAD = new SerializedString("overload");
    static final SerializedString TYPE_OVERLOAD_CLEARED = new SerializedString("overload-cleared");
    static final SerializedString TYPE_WEAK = new SerializedString("weak");
    static final SerializedString TYPE_DRIFT = new SerializedString("drift");
    static final SerializedString TYPE_LINK = new SerializedString("link");
    static final SerializedString TYPE_MARK = new SerializedString("mark");
    static final SerializedString TYPE_ADJUSTER = new SerializedString("adjuster");
    static final SerializedString TYPE_ADVICE = new SerializedString("advice");
    static final SerializedString TYPE_READING = new SerializedString("reading");
    static final SerializedString TYPE_END = new SerializedString("end");

    static final SerializedString VERSION = new SerializedString("version");
    static final SerializedString STARTED_AT = new SerializedString("startedAt");
    static final SerializedString SOURCE = new SerializedString("source");
    static final SerializedString QUANTITY = new SerializedString("quantity");
    static final SerializedString UNIT = new SerializedString("unit");
    static final SerializedString SEEK = new SerializedString("seek");
    static final SerializedString DWELL = new SerializedString("dwell");
    static final SerializedString STEPPED = new SerializedString("stepped");
    static final SerializedString TOOL = new SerializedString("tool");

    static final SerializedString VALUE = new SerializedString("value");
    static final SerializedString SMOOTHED = new SerializedString("smoothed");
    static final SerializedString BEST = new SerializedString("best");
    static final SerializedString BEST_SIGMA = new SerializedString("bestSigma");
    static final SerializedString OF_BEST = new SerializedString("ofBest");
    static final SerializedString TREND = new SerializedString("trend");
    static final SerializedString CONDITION = new SerializedString("condition");

    static final SerializedString BEST_AT = new SerializedString("bestAt");
    static final SerializedString DROP_DB = new SerializedString("dropDb");
    static final SerializedString STEPS_BACK = new SerializedString("stepsBack");
    static final SerializedString STEPS_ERROR = new SerializedString("stepsError");
    static final SerializedString TOP = new SerializedString("top");
    static final SerializedString TOP_ERROR = new SerializedString("topError");
    static final SerializedString LOSS_DB = new SerializedString("lossDb");
    static final SerializedString FIRST = new SerializedString("first");
    static final SerializedString SECOND = new SerializedString("second");
    static final SerializedString DIP_DB = new SerializedString("dipDb");
    static final SerializedString REASON = new SerializedString("reason");
    static final SerializedString CAUSE = new SerializedString("cause");
    static final SerializedString ADVICE = new SerializedString("advice");
    static final SerializedString SNR_DB = new SerializedString("snrDb");
    static final SerializedString PER_MINUTE = new SerializedString("perMinute");
    static final SerializedString STATE = new SerializedString("state");
    static final SerializedString DETAIL = new SerializedString("detail");
    static final SerializedString TEXT = new SerializedString("text");
    static final SerializedString TOPIC = new SerializedString("topic");
    static final SerializedString AMOUNT = new SerializedString("amount");
    static final SerializedString NAME = new SerializedString("name");
    static final SerializedString ACTION = new SerializedString("action");
    static final SerializedString BEFORE = new SerializedString("before");
    static final SerializedString AFTER = new SerializedString("after");
    static final SerializedString GAIN_DB = new SerializedString("gainDb");
    static final SerializedString READINGS = new SerializedString("readings");

    private JsonFields() {}
}
