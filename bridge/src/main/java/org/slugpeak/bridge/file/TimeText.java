package org.slugpeak.bridge.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, a time of day, or both, as loggers write them: ISO 8601 with or without zone, {@code 30.11.2026 10:15:02,5},
 * {@code 10:15:02 PM}. A date with strokes may begin with the day or with the month; it is passed over, since only the
 * differences of times count. Immutable.
 *
 * @param epochDay days from 1970-01-01, where a date is told that means one day only
 * @param nanosOfDay time since midnight in UTC where a zone is told, else of the clock on the wall; empty for a date alone
 */
record TimeText(OptionalLong epochDay, OptionalLong nanosOfDay) {

    static final long DAY_NANOS = 86_400_000_000_000L;

    private static final int NOON = 12;
    private static final int THIS_CENTURY = 2000;

    private static final Pattern FORM = Pattern.compile("(?:(?<year>\\d{4})[-/.](?<month>\\d{1,2})[-/.](?<day>\\d{1,2})"
            + "|(?<day2>\\d{1,2})\\.(?<month2>\\d{1,2})\\.(?<year2>\\d{4}|\\d{2})"
            + "|(?<strokes>\\d{1,2}[/-]\\d{1,2}[/-](?:\\d{4}|\\d{2})))?"
            + "[T ,]?\\s*"
            + "(?:(?<hour>\\d{1,2}):(?<minute>\\d{2}):(?<second>\\d{2})(?:[.,:](?<fraction>\\d{1,9}))?"
            + "(?:\\s*(?<half>[AaPp])\\.?[Mm]\\.?)?"
            + "\\s*(?<zone>Z|[+-]\\d{2}(?::?\\d{2})?)?)?");

    /** Reads a text; empty where it is neither date nor time of day. */
    static Optional<TimeText> parse(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (text.isBlank() || !form.matches()) {
            return Optional.empty();
        }
        try {
            OptionalLong day = day(form);
            return Optional.of(form.group("hour") == null ? new TimeText(day, OptionalLong.empty()) : zoned(form, day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static OptionalLong day(Matcher form) {
        if (form.group("year") != null) {
            return day(number(form, "year"), number(form, "month"), number(form, "day"));
        }
        if (form.group("year2") == null) {
            return OptionalLong.empty();
        }
        int year = number(form, "year2");
        return day(year < 100 ? THIS_CENTURY + year : year, number(form, "month2"), number(form, "day2"));
    }

    private static OptionalLong day(int year, int month, int day) {
        return OptionalLong.of(LocalDate.of(year, month, day).toEpochDay());
    }

    private static TimeText zoned(Matcher form, OptionalLong day) {
        String zone = form.group("zone");
        long offset = zone == null ? 0 : ZoneOffset.of(zone).getTotalSeconds() * 1_000_000_000L;
        long nanos = clock(form) - offset;
        return new TimeText(
                day.isPresent() ? OptionalLong.of(day.getAsLong() + Math.floorDiv(nanos, DAY_NANOS)) : day,
                OptionalLong.of(Math.floorMod(nanos, DAY_NANOS)));
    }

    private static long clock(Matcher form) {
        int hour = number(form, "hour");
        String half = form.group("half");
        if (half != null) {
            hour = hour % NOON + (half.equalsIgnoreCase("p") ? NOON : 0);
        }
        String fraction = form.group("fraction") == null ? "" : form.group("fraction");
        int nanos = Integer.parseInt((fraction + "000000000").substring(0, 9));
        return LocalTime.of(hour, number(form, "minute"), number(form, "second"), nanos)
                .toNanoOfDay();
    }

    private static int number(Matcher form, String group) {
        return Integer.parseInt(form.group(group));
    }
}
