package org.slugpeak.bridge.line;

import java.util.Optional;
import java.util.regex.Pattern;
import org.slugpeak.core.reading.Measurand;

/**
 * What the lines of one instrument look like. Immutable; any thread may use it.
 *
 * @param title what to call the instrument until it says its name
 * @param separator stands between fields; empty for any number of spaces and tabs
 * @param tag first field of a line with a reading; empty where all lines have one
 * @param valueField counted from 1
 * @param measurand quantity and unit; the unit is empty where the lines say it or nobody does
 * @param scale from the number in the line to the reading
 * @param time where a line has its time stamp
 * @param flags where a line says whether its number is good
 * @param checksum how a line is protected
 * @param start how the instrument says what it is
 * @param comment lines that begin so are passed over; empty where there are none
 * @param asking what must be sent, and when
 */
record LineFormat(
        String title,
        String separator,
        Optional<String> tag,
        int valueField,
        Measurand measurand,
        Scale scale,
        Optional<TimeFormat> time,
        Optional<FlagFormat> flags,
        Optional<ChecksumFormat> checksum,
        Optional<StartFormat> start,
        Optional<String> comment,
        Asking asking) {

    String[] fields(String line) {
        return separator.isEmpty() ? line.split("\\s+") : line.split(Pattern.quote(separator), -1);
    }

    int fieldsNeeded() {
        int needed = Math.max(valueField, time.map(TimeFormat::field).orElse(0));
        return Math.max(needed, flags.map(FlagFormat::field).orElse(0));
    }
}
