package org.slugpeak.bridge.generator;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an answer looks like: text as it comes, in capitals or not, in which <code>{number}</code> stands for the number and {@code *}
 * for anything. Numbers are those of IEEE 488.2 section 8.7: {@code 455000}, {@code +4.55E+05}, {@code -30.0}. Immutable.
 *
 * @param written as in the description
 */
record AnswerForm(String written, Pattern pattern) {

    private static final String NUMBER = "\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*";
    private static final Pattern GAP = Pattern.compile("\\{number}|\\*");

    static AnswerForm of(String written) {
        StringBuilder pattern = new StringBuilder();
        Matcher gap = GAP.matcher(written);
        int from = 0;
        while (gap.find()) {
            pattern.append(Pattern.quote(written.substring(from, gap.start())));
            pattern.append(gap.group().equals("*") ? ".*?" : NUMBER);
            from = gap.end();
        }
        pattern.append(Pattern.quote(written.substring(from)));
        return new AnswerForm(written, Pattern.compile(pattern.toString(), Pattern.CASE_INSENSITIVE));
    }

    boolean fits(String answer) {
        return pattern.matcher(answer.strip()).matches();
    }

    Optional<Double> number(String answer) {
        Matcher matcher = pattern.matcher(answer.strip());
        return matcher.matches() ? Optional.of(Double.parseDouble(matcher.group(1))) : Optional.empty();
    }
}
