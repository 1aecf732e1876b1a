package org.slugpeak.bridge.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.Suggestion;

/** Reads what a description says of the bytes and bits of a frame, and notes every mistake. */
final class FrameParts {

    /** What a code is called that consists of blanks only. */
    private static final String BLANK = "blank";

    private static final Map<String, FrameNumber.Coding> CODINGS =
            Map.of("ascii", FrameNumber.Coding.ascii(), "binary", FrameNumber.Coding.binary());

    private final int length;

    FrameParts(int length) {
        this.length = length;
    }

    FrameNumber number(Section frame) {
        if (!frame.has("number")) {
            frame.requiredText("number"); // says that it is missing
        }
        try (Section section = frame.tableOrEmpty("number")) {
            List<String> overload = section.texts("overload", List.of());
            if (section.has("text")) {
                String written = section.text("text").orElse("");
                return new FrameNumber(
                        List.of(), FrameNumber.Coding.ascii(), Optional.of(text(section, "text", written)), overload);
            }
            List<Bits> digits = section.texts("digits", List.of()).stream()
                    .map(place -> bits(section, "digits", place, length))
                    .toList();
            if (digits.isEmpty() && frame.has("number")) {
                section.problem("digits", "a number needs 'digits', the places of its digits, or 'text'");
            }
            FrameNumber.Coding coding = section.has("codes")
                    ? FrameNumber.Coding.table(letters(section))
                    : section.choice("coding", CODINGS, FrameNumber.Coding.ascii());
            return new FrameNumber(digits, coding, Optional.empty(), overload);
        }
    }

    Map<Bits, FrameMark> flags(Section frame) {
        Map<Bits, FrameMark> flags = new LinkedHashMap<>();
        try (Section section = frame.tableOrEmpty("flags")) {
            for (String place : section.keys()) {
                Bits bits = bits(section, place, place, length);
                mark(section, place, section.requiredText(place)).ifPresent(mark -> flags.put(bits, mark));
            }
        }
        return Map.copyOf(flags);
    }

    List<Lookup> tables(Section frame) {
        List<Lookup> tables = new ArrayList<>();
        for (Section table : frame.tables("table")) {
            try (Section section = table) {
                tables.add(table(section));
            }
        }
        return List.copyOf(tables);
    }

    private Lookup table(Section section) {
        boolean ofText = section.has("text");
        Lookup.Place place = ofText
                ? Lookup.Place.text(text(section, "text", section.text("text").orElse("")))
                : Lookup.Place.number(bits(section, "at", section.requiredText("at"), length));
        Map<String, Meaning> codes = new HashMap<>();
        try (Section inner = section.tableOrEmpty("codes")) {
            for (String code : inner.keys()) {
                String written = inner.text(code).orElse("");
                codes.put(key(code), meaning(inner, code, written));
            }
        }
        if (codes.isEmpty()) {
            section.problem("codes", "a table needs 'codes', for example codes = { \"3B\" = \"volts\" }");
        }
        return new Lookup(
                place, Map.copyOf(codes), section.text("otherwise").map(it -> meaning(section, "otherwise", it)));
    }

    private static String key(String code) {
        return code.equals(BLANK) ? "" : code.toUpperCase(Locale.ROOT).replace(" ", "");
    }

    private static Meaning meaning(Section section, String key, String written) {
        List<FrameMark> marks = new ArrayList<>();
        double factor = 1;
        for (String word : written.strip().split("\\s+", -1)) {
            if (word.matches("[0-9.]+(?:e[+-]?[0-9]{1,2})?")) {
                factor = Double.parseDouble(word);
            } else if (!word.isEmpty()) {
                mark(section, key, word).ifPresent(marks::add);
            }
        }
        return new Meaning(List.copyOf(marks), factor);
    }

    private static Optional<FrameMark> mark(Section section, String key, String word) {
        Optional<FrameMark> mark = Optional.ofNullable(Meaning.WORDS.get(word));
        if (mark.isEmpty() && !word.isEmpty()) {
            section.problem(key, "'" + word + "' is no meaning" + Suggestion.didYouMean(word, Meaning.WORDS.keySet()));
        }
        return mark;
    }

    private static Map<Integer, Character> letters(Section number) {
        Map<Integer, Character> letters = new HashMap<>();
        try (Section section = number.tableOrEmpty("codes")) {
            for (String code : section.keys()) {
                String letter = section.requiredText(code);
                if (letter.length() != 1 || !code.matches("[0-9A-Fa-f]{1,4}")) {
                    section.problem(
                            code,
                            "'" + code
                                    + "' must be the code of a digit in hexadecimal digits, and stand for one letter");
                } else {
                    letters.put(Integer.parseInt(code, 16), letter.charAt(0));
                }
            }
        }
        return Map.copyOf(letters);
    }

    private TextField text(Section section, String key, String written) {
        return TextField.parse(written, length).orElseGet(() -> {
            section.problem(
                    key, "'" + written + "' must be bytes of the frame, for example \"2-8\", the last " + (length - 1));
            return new TextField(0, 1);
        });
    }

    static Bits bits(Section section, String key, String written, int length) {
        return Bits.parse(written, length).orElseGet(() -> {
            section.problem(
                    key,
                    "'" + written + "' must be a place in the frame: a byte such as \"6\", a bit such as"
                            + " \"1.3\", or several such as \"1.0-2 2.0-3\"; the last byte is " + (length - 1));
            return Bits.parse("0", 1).orElseThrow();
        });
    }
}
