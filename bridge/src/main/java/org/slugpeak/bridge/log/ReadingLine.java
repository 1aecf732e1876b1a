package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;

/**
 * The line of a reading: almost every line is one, so what stands between its numbers is put together once. It is letter for
 * letter the line that {@link LineWriter} would write. One thread at a time.
 */
final class ReadingLine {

    private static final SerializableString BEGIN = new SerializedString(
            "{" + named(JsonFields.TYPE) + quoted(JsonFields.TYPE_READING) + "," + named(JsonFields.T));
    private static final SerializableString VALUE = new SerializedString("," + named(JsonFields.VALUE));
    private static final SerializableString SMOOTHED = new SerializedString("," + named(JsonFields.SMOOTHED));
    private static final SerializableString BEST = new SerializedString("," + named(JsonFields.BEST));
    private static final SerializableString BEST_SIGMA = new SerializedString("," + named(JsonFields.BEST_SIGMA));
    private static final SerializableString OF_BEST = new SerializedString("," + named(JsonFields.OF_BEST));
    private static final SerializableString NULL = new SerializedString("null");

    private final JsonGenerator json;
    private final char[] seconds = new char[Seconds.LONGEST];
    private final Repeated best = new Repeated();
    private final Repeated bestSigma = new Repeated();
    private Trend trend = Trend.STEADY;
    private Condition condition = Condition.OK;
    private SerializableString words = words(trend, condition);

    ReadingLine(JsonGenerator json) {
        this.json = json;
    }

    /** Writes the line, its newline included. */
    void write(ReadingTaken it) {
        Reading reading = it.reading();
        try {
            json.writeRaw(BEGIN);
            int from = Seconds.write(reading.tNanos(), seconds);
            json.writeRaw(seconds, from, seconds.length - from);
            number(VALUE, reading.condition().hasValue() ? reading.value() : Double.NaN);
            number(SMOOTHED, it.smoothed());
            number(BEST, it.best(), best);
            number(BEST_SIGMA, it.bestSigma(), bestSigma);
            number(OF_BEST, it.ofBest());
            json.writeRaw(remembered(it.trend(), reading.condition()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void number(SerializableString name, double value) throws IOException {
        json.writeRaw(name);
        if (Double.isFinite(value)) {
            json.writeRaw(NumberOutput.toString(value, true));
        } else {
            json.writeRaw(NULL);
        }
    }

    private void number(SerializableString name, double value, Repeated memory) throws IOException {
        json.writeRaw(name);
        if (Double.isFinite(value)) {
            char[] digits = memory.digits(value);
            json.writeRaw(digits, 0, digits.length);
        } else {
            json.writeRaw(NULL);
        }
    }

    /** Trend and condition seldom change from one line to the next. */
    private SerializableString remembered(Trend newTrend, Condition newCondition) {
        if (newTrend != trend || newCondition != condition) {
            trend = newTrend;
            condition = newCondition;
            words = words(trend, condition);
        }
        return words;
    }

    private static SerializableString words(Trend trend, Condition condition) {
        return new SerializedString("," + named(JsonFields.TREND) + "\"" + trend.code() + "\","
                + named(JsonFields.CONDITION) + "\"" + condition.code() + "\"}\n");
    }

    private static String named(SerializableString name) {
        return quoted(name) + ":";
    }

    private static String quoted(SerializableString word) {
        return "\"" + word.getValue() + "\"";
    }
}
