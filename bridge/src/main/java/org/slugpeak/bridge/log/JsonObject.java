package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.SerializableString;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import org.slugpeak.bridge.decimal.Decimal;

/** The plain fields of one line's JSON object; what is nested in it is passed over. One thread at a time. */
final class JsonObject {

    private final Set<String> exact;
    private final Decimal decimal = new Decimal('.');
    private String[] names = new String[16];
    private String[] texts = new String[16];
    private double[] numbers = new double[16];
    private JsonToken[] tokens = new JsonToken[16];
    private int count;

    /**
     * An object that is read again and again.
     *
     * @param exact names of the numbers that a double cannot hold exactly
     */
    JsonObject(Set<String> exact) {
        this.exact = Set.copyOf(exact);
    }

    /**
     * Reads a line.
     *
     * @throws BadLine if it is not one whole JSON object
     */
    void read(byte[] bytes, int from, int to) throws BadLine {
        count = 0;
        try (JsonParser parser = JsonFields.FACTORY.createParser(bytes, from, to - from)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new BadLine("is not a JSON object");
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                JsonToken token = parser.nextToken();
                if (token.isStructStart()) {
                    parser.skipChildren();
                } else {
                    add(name, token, parser);
                }
            }
            if (parser.nextToken() != null) {
                throw new BadLine("goes on after its JSON object");
            }
        } catch (IOException e) {
            throw new BadLine("is not a whole JSON object");
        }
    }

    boolean has(SerializableString name) {
        return find(name) >= 0;
    }

    /** Whether a field is there and true. */
    boolean flag(SerializableString name) {
        int index = find(name);
        return index >= 0 && tokens[index] == JsonToken.VALUE_TRUE;
    }

    String text(SerializableString name) throws BadLine {
        int index = find(name);
        if (index < 0 || tokens[index] != JsonToken.VALUE_STRING) {
            throw new BadLine("has no text '" + name.getValue() + "'");
        }
        return texts[index];
    }

    /** A number; NaN where it is null or missing. */
    double number(SerializableString name) throws BadLine {
        int index = find(name);
        if (index < 0 || tokens[index] == JsonToken.VALUE_NULL) {
            return Double.NaN;
        }
        requireNumber(index);
        if (Double.isInfinite(numbers[index])) {
            throw new BadLine("has a number '" + name.getValue() + "' beyond the range of numbers");
        }
        return numbers[index];
    }

    /** A time in seconds, as nanoseconds. */
    long nanos(SerializableString name) throws BadLine {
        int index = find(name);
        if (index < 0) {
            throw new BadLine("has no '" + name.getValue() + "'");
        }
        requireNumber(index);
        byte[] ascii = texts[index].getBytes(StandardCharsets.ISO_8859_1);
        decimal.read(ascii, 0, ascii.length);
        long nanos = decimal.toNanos(Decimal.SECONDS);
        if (nanos == Decimal.OUT_OF_RANGE) {
            throw new BadLine("has a time '" + name.getValue() + "' out of range");
        }
        return nanos;
    }

    long count(SerializableString name) throws BadLine {
        int index = find(name);
        if (index < 0) {
            throw new BadLine("has no '" + name.getValue() + "'");
        }
        try {
            return Long.parseLong(texts[index]);
        } catch (NumberFormatException e) {
            throw new BadLine("has no whole number '" + name.getValue() + "'");
        }
    }

    private void requireNumber(int index) throws BadLine {
        if (!tokens[index].isNumeric()) {
            throw new BadLine("has no number '" + names[index] + "'");
        }
    }

    private void add(String name, JsonToken token, JsonParser parser) throws IOException {
        if (count == names.length) {
            names = Arrays.copyOf(names, 2 * count);
            texts = Arrays.copyOf(texts, 2 * count);
            numbers = Arrays.copyOf(numbers, 2 * count);
            tokens = Arrays.copyOf(tokens, 2 * count);
        }
        boolean number = token.isNumeric();
        names[count] = name;
        tokens[count] = token;
        numbers[count] = number ? parser.getDoubleValue() : Double.NaN;
        texts[count] = number && !exact.contains(name) ? "" : parser.getText();
        count++;
    }

    private int find(SerializableString name) {
        String wanted = name.getValue();
        for (int i = 0; i < count; i++) {
            if (wanted.equals(names[i])) {
                return i;
            }
        }
        return -1;
    }
}
