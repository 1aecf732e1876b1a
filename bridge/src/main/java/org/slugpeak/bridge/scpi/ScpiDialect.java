package org.slugpeak.bridge.scpi;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.slugpeak.bridge.instrument.MeterSetting;

/**
 * The words that one family of meters understands. In each, <code>{function}</code> stands for {@code DC} or {@code AC} and
 * <code>{range}</code> for the fixed range in volts, or for nothing. Immutable; any thread may use it.
 *
 * @param remote makes the meter listen to the line; may be empty
 * @param local gives the keys back to the user at the end; may be empty
 * @param configure chooses the function; may be empty
 * @param range fixes the range; empty where the meter cannot
 * @param readings asks for a reading; tried in this order until one is answered
 * @param all whether every number of an answer is a reading, and not only the first
 * @param decimalComma whether its numbers are written {@code 1,25}
 * @param patienceNanos the longest that one reading may take
 * @param intervalNanos the least time from an answer to the next question
 * @param lineEnds one of them ends each message; where there are several, the first that is answered
 */
record ScpiDialect(
        String remote,
        String local,
        String configure,
        String range,
        List<String> readings,
        boolean all,
        boolean decimalComma,
        long patienceNanos,
        long intervalNanos,
        List<String> lineEnds) {

    static final String IDENTIFY = "*IDN?";
    static final String ERROR = "SYSTem:ERRor?";

    String fill(String template, MeterSetting setting) {
        String range = setting.rangeVolts().isPresent()
                ? BigDecimal.valueOf(setting.rangeVolts().getAsDouble())
                        .stripTrailingZeros()
                        .toPlainString()
                : "";
        return template.replace("{function}", setting.function().name().toUpperCase(Locale.ROOT))
                .replace("{range}", range)
                .strip();
    }

    byte[] message(String text, String end) {
        return (text + end).getBytes(StandardCharsets.US_ASCII);
    }
}
