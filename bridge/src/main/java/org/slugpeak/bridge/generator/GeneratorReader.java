package org.slugpeak.bridge.generator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.instrument.LinkTable;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;
import org.slugpeak.core.generator.LevelUnit;

/** Reads one description of a generator and finds every mistake in it. Stateless. */
final class GeneratorReader {

    private static final int LONGEST_MILLIS = 60_000;
    private static final int USUAL_PATIENCE_MILLIS = 1_000;
    private static final int SHORTEST_PATIENCE_MILLIS = 50;
    private static final int USUAL_SETTLING_MILLIS = 100;
    private static final int MOST_DIGITS = 12;
    private static final int USUAL_DECIMALS = 3;

    private static final Map<String, String> LINE_ENDS = Map.of("lf", "\n", "cr", "\r", "crlf", "\r\n", "none", "");
    private static final Map<String, Double> HERTZ = Map.of("Hz", 1.0, "kHz", 1e3, "MHz", 1e6);

    /** SCPI-1999 volume 2 section 21.8; some write the sign. */
    private static final List<String> USUAL_NO_ERROR = List.of("0,*", "+0,*");

    private static final Map<String, LevelUnit> LEVEL_UNITS =
            Arrays.stream(LevelUnit.values()).collect(Collectors.toMap(LevelUnit::word, each -> each));

    private GeneratorReader() {}

    static GeneratorDescription read(String file, String text) throws BadConfiguration {
        return TomlFile.read(file, "description", text, GeneratorReader::description);
    }

    private static GeneratorDescription description(Section top) {
        String name = top.requiredText("name");
        String title = top.text("title").orElse(name);
        String hint = top.text("hint").orElse("");
        LinkSettings link;
        try (Section section = top.tableOrEmpty("link")) {
            link = LinkTable.read(section);
        }
        TalkForm talk;
        long settlingNanos;
        try (Section section = top.tableOrEmpty("talk")) {
            talk = talk(section);
            settlingNanos = TimeUnit.MILLISECONDS.toNanos(
                    section.whole("settling-ms", 0, LONGEST_MILLIS, USUAL_SETTLING_MILLIS));
        }
        NumberLines frequency;
        double hertz;
        try (Section section = top.tableOrEmpty("set-frequency")) {
            hertz = section.choice("unit", HERTZ, 1.0);
            frequency = number(section);
        }
        Optional<NumberLines> level = Optional.empty();
        LevelUnit levelUnit = LevelUnit.DBM;
        if (top.has("set-level")) {
            try (Section section = top.tableOrEmpty("set-level")) {
                section.requiredText("unit");
                levelUnit = section.choice("unit", LEVEL_UNITS, LevelUnit.DBM);
                level = Optional.of(number(section));
            }
        }
        return new GeneratorDescription(
                name,
                title,
                hint,
                link,
                talk,
                frequency,
                hertz,
                level,
                levelUnit,
                switching(top, "output"),
                switching(top, "modulation"),
                settlingNanos);
    }

    private static TalkForm talk(Section section) {
        return new TalkForm(
                section.choice("line-end", LINE_ENDS, "\n"),
                section.texts("greeting", List.of()),
                section.text("identify"),
                section.texts("farewell", List.of()),
                section.text("acknowledge").map(AnswerForm::of),
                forms(section, "refused", List.of()),
                section.text("errors"),
                forms(section, "no-error", USUAL_NO_ERROR),
                TimeUnit.MILLISECONDS.toNanos(
                        section.whole("patience-ms", SHORTEST_PATIENCE_MILLIS, LONGEST_MILLIS, USUAL_PATIENCE_MILLIS)));
    }

    private static List<AnswerForm> forms(Section section, String key, List<String> usual) {
        return section.texts(key, usual).stream().map(AnswerForm::of).toList();
    }

    private static NumberLines number(Section section) {
        String send = section.requiredText("send");
        if (!send.isEmpty() && !send.contains(NumberLines.GAP)) {
            section.problem(
                    "send", "'send' must hold " + NumberLines.GAP + " where the number goes, not '" + send + "'");
        }
        String answer = section.text("answer").orElse(NumberLines.GAP);
        if (!answer.contains(NumberLines.GAP)) {
            section.problem(
                    "answer", "'answer' must hold " + NumberLines.GAP + " where the number is, not '" + answer + "'");
        }
        Optional<NumberLines.Question> question =
                section.text("read-back").map(ask -> new NumberLines.Question(ask, AnswerForm.of(answer)));
        Optional<String> askLowest = section.text("ask-lowest");
        Optional<String> askHighest = section.text("ask-highest");
        if (askLowest.isPresent() != askHighest.isPresent()) {
            section.problem("ask-lowest", "'ask-lowest' and 'ask-highest' go together: give both");
        }
        double lowest = section.number("lowest").orElse(Double.NEGATIVE_INFINITY);
        double highest = section.number("highest").orElse(Double.POSITIVE_INFINITY);
        if (lowest >= highest) {
            section.problem("highest", "'highest' must be above 'lowest'");
        }
        return new NumberLines(
                send,
                section.whole("digits", 0, MOST_DIGITS, 0),
                section.whole("decimals", 0, MOST_DIGITS, USUAL_DECIMALS),
                lowest,
                highest,
                question,
                askLowest.flatMap(
                        low -> askHighest.map(high -> new NumberLines.Limits(low, high, AnswerForm.of(answer)))));
    }

    private static Optional<SwitchLines> switching(Section top, String table) {
        if (!top.has(table)) {
            return Optional.empty();
        }
        try (Section section = top.tableOrEmpty(table)) {
            List<String> on = lines(section, "on");
            List<String> off = lines(section, "off");
            String isOn = section.text("is-on").orElse("1");
            String isOff = section.text("is-off").orElse("0");
            return Optional.of(new SwitchLines(
                    on,
                    off,
                    section.text("read-back")
                            .map(ask -> new SwitchLines.Question(ask, AnswerForm.of(isOn), AnswerForm.of(isOff)))));
        }
    }

    private static List<String> lines(Section section, String key) {
        List<String> lines = new ArrayList<>(section.texts(key, List.of()));
        if (lines.isEmpty()) {
            section.problem(key, "'" + key + "' must be a list of the lines to send, in square brackets");
        }
        return lines;
    }
}
