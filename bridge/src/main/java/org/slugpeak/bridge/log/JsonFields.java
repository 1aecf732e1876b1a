package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.json.JsonReadFeature;

/** How JSON is written here, and the names that are put together once because they stand in almost every line. */
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

    static final SerializedString TYPE_READING = new SerializedString("reading");

    static final SerializedString VALUE = new SerializedString("value");
    static final SerializedString SMOOTHED = new SerializedString("smoothed");
    static final SerializedString BEST = new SerializedString("best");
    static final SerializedString BEST_SIGMA = new SerializedString("bestSigma");
    static final SerializedString OF_BEST = new SerializedString("ofBest");
    static final SerializedString TREND = new SerializedString("trend");
    static final SerializedString CONDITION = new SerializedString("condition");

    private JsonFields() {}
}
