package org.slugpeak.bridge.scpi;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.bridge.instrument.MeterSetting;

/**
 * An answer without what meters put round their numbers: a prompt, quotes, the head of a block (IEEE 488.2 section 8.7.9), the
 * command repeated, the function in words. Immutable.
 *
 * @param numbers the fields that should be numbers, in their order
 * @param problem why none of them may be taken; empty where they may
 */
record Wording(List<String> numbers, String problem) {

    /** Blanks, prompts of terminals ({@code SCPI>}, {@code 3>}), and of one family ({@code =>}, {@code ?>}, {@code !>}). */
    private static final Pattern PROMPT = Pattern.compile("^(?:\\s*(?:\\w{0,8}|[=?!])>\\s*)+");

    private static final Pattern QUOTED = Pattern.compile("([\"'])(.*)\\1");
    private static final Pattern BLOCK = Pattern.compile("#(?:0.*|([1-9])(.*))", Pattern.DOTALL);
    private static final Pattern WORDS_BEFORE =
            Pattern.compile("(?:[+-]?\\d\\s+)?[:A-Za-z][:A-Za-z0-9_]*\\s+(?=[+\\-.\\d])");
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
    private static final Pattern FRACTION = Pattern.compile("\\d[^.]*");

    private static final Set<String> OTHERS = Set.of(
            "ADC",
            "AAC",
            "DCA",
            "ACA",
            "IDC",
            "IAC",
            "CURR",
            "CURRENT",
            "OHM",
            "OHMS",
            "RES",
            "FRES",
            "RESISTANCE",
            "FREQ",
            "FREQUENCY",
            "HZ",
            "PER",
            "PERIOD",
            "CAP",
            "CAPACITANCE",
            "TEMP",
            "TEMPERATURE",
            "DIOD",
            "DIODE",
            "CONT",
            "CONTINUITY");

    private static final Set<String> ALTERNATING = Set.of("VAC", "ACV", "AC", "MVAC", "ACMV");
    private static final Set<String> DIRECT = Set.of("VDC", "DCV", "DC", "MVDC", "DCMV");
    private static final Set<String> LABELS = Set.of("V", "VDC", "VAC", "DCV", "ACV");

    /** A line without the prompts at its beginning; empty where it is nothing else. */
    static String withoutPrompt(String line) {
        return PROMPT.matcher(line).replaceFirst("").strip();
    }

    /** Takes an answer apart. */
    static Wording of(String answer, ScpiDialect dialect, MeterSetting setting) {
        String plain = withoutFrame(answer);
        String problem = otherFunction(plain, setting);
        String bare = WORDS_BEFORE.matcher(plain).replaceFirst("");
        if (dialect.decimalComma() || setting.decimalComma()) {
            return new Wording(List.of(bare.replace(',', '.').split(";", -1)), problem);
        }
        List<String> fields = Arrays.stream(bare.split("[,;]", -1))
                .map(String::strip)
                .filter(field -> !LABELS.contains(field.toUpperCase(Locale.ROOT)))
                .toList();
        boolean twofold = !dialect.all()
                && fields.size() == 2
                && bare.indexOf(',') >= 0
                && WHOLE.matcher(fields.get(0)).matches()
                && FRACTION.matcher(fields.get(1)).matches();
        return twofold && problem.isEmpty()
                ? new Wording(List.of(), twofold(bare, fields))
                : new Wording(fields, problem);
    }

    private static String twofold(String bare, List<String> fields) {
        return "'" + shortened(bare) + "' may be " + fields.get(0) + "." + fields.get(1) + " or the two numbers "
                + fields.get(0) + " and " + fields.get(1) + ": use --decimal-comma if the comma is the decimal point,"
                + " or numbers = \"all\" in a description if it is not";
    }

    private static String withoutFrame(String answer) {
        String plain = answer.strip();
        Matcher block = BLOCK.matcher(plain);
        if (block.matches()) {
            plain = block.group(1) == null ? plain.substring(2) : counted(plain, block);
        }
        Matcher quoted = QUOTED.matcher(plain.strip());
        return quoted.matches() ? quoted.group(2).strip() : plain.strip();
    }

    private static String counted(String plain, Matcher block) {
        int digits = Integer.parseInt(block.group(1));
        String rest = block.group(2);
        if (rest.length() < digits || !rest.substring(0, digits).matches("\\d+")) {
            return plain;
        }
        int count = Integer.parseInt(rest.substring(0, digits));
        return rest.length() - digits >= count ? rest.substring(digits, digits + count) : plain;
    }

    /** What the meter measures by its own words, if that is not what it was asked for. */
    private static String otherFunction(String plain, MeterSetting setting) {
        List<String> words = Arrays.asList(plain.split("[^A-Za-z]+"));
        Optional<String> other =
                words.stream().filter(word -> OTHERS.contains(upper(word))).findFirst();
        if (other.isPresent()) {
            return "the meter reads '" + other.get() + "', not volts: turn its switch to volts";
        }
        boolean alternating = setting.function() == MeterSetting.Function.AC;
        if (words.stream().map(Wording::upper).anyMatch(alternating ? DIRECT::contains : ALTERNATING::contains)) {
            return alternating
                    ? "the meter reads DC volts, not AC: turn it to AC, or start again without --ac"
                    : "the meter reads AC volts, not DC: turn it to DC, or start again with --ac";
        }
        return "";
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT);
    }

    /** As much of a text as fits into a message. */
    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }
}
