package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.slugpeak.core.session.ReadingTaken;

/** Writes flat JSON objects, one a line, into memory, with one generator for all of them. One thread at a time. */
final class LineWriter {

    private final JsonGenerator json;
    private final ReadingLine readings;
    private final char[] seconds = new char[Seconds.LONGEST];
    private boolean whole;

    /** A writer into memory: the stream must not throw. */
    LineWriter(OutputStream memory) {
        try {
            json = JsonFields.FACTORY.createGenerator(memory);
            readings = new ReadingLine(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole line of a reading; {@link #end} hands it over like any other. */
    LineWriter reading(ReadingTaken it) {
        whole = true;
        readings.write(it);
        return this;
    }

    LineWriter begin(SerializableString type) {
        try {
            json.writeStartObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return word(JsonFields.TYPE, type);
    }

    LineWriter begin(SerializableString type, long tNanos) {
        return begin(type).time(JsonFields.T, tNanos);
    }

    /** A time in seconds, exact to the nanosecond. */
    LineWriter time(SerializableString name, long nanos) {
        try {
            json.writeFieldName(name);
            int from = Seconds.write(nanos, seconds);
            json.writeNumber(seconds, from, seconds.length - from);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** A number that reads back to the same double; null for one that is not finite. */
    LineWriter number(SerializableString name, double value) {
        try {
            json.writeFieldName(name);
            if (Double.isFinite(value)) {
                json.writeNumber(value);
            } else {
                json.writeNull();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    LineWriter count(SerializableString name, long value) {
        try {
            json.writeFieldName(name);
            json.writeNumber(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    LineWriter text(SerializableString name, String value) {
        try {
            json.writeFieldName(name);
            json.writeString(wellFormed(value));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** A field that is true; where it is not, it is left out. */
    LineWriter flag(SerializableString name) {
        try {
            json.writeFieldName(name);
            json.writeBoolean(true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** A word from a fixed vocabulary. */
    LineWriter word(SerializableString name, SerializableString value) {
        try {
            json.writeFieldName(name);
            json.writeString(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Ends the line and hands it over to the memory. */
    LineWriter end() {
        try {
            if (!whole) {
                json.writeEndObject();
                json.writeRaw('\n');
            }
            whole = false;
            json.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Half a surrogate pair, as a broken keyboard driver may send, has no UTF-8 form: it becomes a question mark. */
    private static String wellFormed(String value) {
        for (int i = 0; i < value.length(); i++) {
            if (Character.isSurrogate(value.charAt(i))) {
                return new String(value.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
            }
        }
        return value;
    }
}
