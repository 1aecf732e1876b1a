package org.slugpeak.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.slugpeak.bridge.source.Understanding;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.SourcePhrase;

/** Says how a text with readings was understood. */
public final class UnderstandingText {

    private final Understanding understanding;

    public UnderstandingText(Understanding understanding) {
        this.understanding = understanding;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(NamedLine.of(SourcePhrase.SEPARATOR.of(), separator()));
        lines.add(NamedLine.of(SourcePhrase.COLUMNS.of(), columns()));
        lines.add(NamedLine.of(SourcePhrase.TIMES.of(), times()));
        lines.add(NamedLine.of(SourcePhrase.UNIT.of(), unit()));
        understanding
                .lines()
                .forEach(each -> lines.add(NamedLine.of(
                        SourcePhrase.LINE.of(each.number()), each.meaning().match(new Meant(each.text())))));
        return lines;
    }

    private String separator() {
        String separation = switch (understanding.separation()) {
            case NONE -> SourcePhrase.SEPARATED_BY_NOTHING.of();
            case COMMAS -> SourcePhrase.COMMAS.of();
            case SEMICOLONS -> SourcePhrase.SEMICOLONS.of();
            case TABS -> SourcePhrase.TABS.of();
            case BLANKS -> SourcePhrase.BLANKS.of();
        };
        return understanding.decimalCommas()
                ? SourcePhrase.DECIMAL_COMMAS.of(separation)
                : SourcePhrase.DECIMAL_POINTS.of(separation);
    }

    private String columns() {
        String reading = name(understanding.reading());
        String used = understanding
                .time()
                .map(time -> SourcePhrase.READING_AND_TIME.of(reading, name(time)))
                .orElseGet(() -> SourcePhrase.READING.of(reading));
        String unused =
                understanding.unused().stream().map(UnderstandingText::name).collect(Collectors.joining(", "));
        return unused.isEmpty() ? used : SourcePhrase.NOT_USED.of(used, unused);
    }

    private static String name(Understanding.Column column) {
        return column.name()
                .map(name -> SourcePhrase.NAMED.of(column.number(), name))
                .orElseGet(() -> Integer.toString(column.number()));
    }

    private String times() {
        return switch (understanding.times()) {
            case NONE -> SourcePhrase.EVEN_RATE.of();
            case SECONDS -> SourcePhrase.SECONDS.of();
            case MILLISECONDS -> SourcePhrase.MILLISECONDS.of();
            case MICROSECONDS -> SourcePhrase.MICROSECONDS.of();
            case NANOSECONDS -> SourcePhrase.NANOSECONDS.of();
            case DAYS -> SourcePhrase.DAYS.of();
            case DATE_AND_CLOCK -> SourcePhrase.DATE_AND_CLOCK.of();
            case CLOCK -> SourcePhrase.CLOCK.of();
        };
    }

    private String unit() {
        if (understanding.fromDecibels()) {
            return SourcePhrase.TURNED.of(
                    understanding.unit().isEmpty() ? SourcePhrase.RATIOS.of() : understanding.unit());
        }
        return understanding.unit().isEmpty() ? SourcePhrase.NO_UNIT.of() : understanding.unit();
    }

    private final class Meant implements Understanding.Meaning.Matcher<String> {

        private final String text;

        Meant(String text) {
            this.text = text;
        }

        @Override
        public String read(Understanding.Read it) {
            String value = it.condition().hasValue()
                    ? (it.value() + " " + understanding.unit()).strip()
                    : CodeWords.of(it.condition().code());
            OptionalDouble seconds = it.atSeconds();
            return seconds.isPresent()
                    ? SourcePhrase.IS_AT.of(text, value, seconds.getAsDouble())
                    : SourcePhrase.IS.of(text, value);
        }

        @Override
        public String unread(Understanding.Unread it) {
            return SourcePhrase.UNREAD.of(text, it.problem());
        }
    }
}
