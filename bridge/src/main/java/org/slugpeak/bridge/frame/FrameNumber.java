package org.slugpeak.bridge.frame;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a frame carries its number. Immutable.
 *
 * @param digits places of the digits, the most significant first; none for a number in text
 * @param coding what a digit's code stands for
 * @param text the number as text; empty for digits
 * @param overload what stands in place of a number beyond the range, in upper case; a star is any letter but a digit
 */
record FrameNumber(List<Bits> digits, Coding coding, Optional<TextField> text, List<String> overload) {

    private static final Pattern DIGITS = Pattern.compile("[0-9]+");
    private static final Pattern PLAIN = Pattern.compile("-?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)");

    /** What the code of a digit stands for. */
    @FunctionalInterface
    interface Coding {

        /** Empty where no digit has that code. */
        Optional<Character> letter(int code);

        /** The code is the letter itself. */
        static Coding ascii() {
            return code -> code < 0x80 ? Optional.of((char) code) : Optional.empty();
        }

        /** The code is the digit; beyond 9 letters from A on. */
        static Coding binary() {
            return code ->
                    code < 36 ? Optional.of(Character.toUpperCase(Character.forDigit(code, 36))) : Optional.empty();
        }

        /** A table. */
        static Coding table(Map<Integer, Character> letters) {
            return new Table(letters);
        }

        /** A table of codes. */
        record Table(Map<Integer, Character> letters) implements Coding {
            @Override
            public Optional<Character> letter(int code) {
                return Optional.ofNullable(letters.get(code));
            }
        }
    }

    /** What stands in the place of the number; empty where a digit has no known shape. */
    Optional<String> shown(byte[] frame) {
        if (text.isPresent()) {
            return Optional.of(text.get().of(frame).toUpperCase(Locale.ROOT));
        }
        List<Optional<Character>> letters =
                digits.stream().map(each -> coding.letter(each.of(frame))).toList();
        return letters.stream().allMatch(Optional::isPresent)
                ? Optional.of(letters.stream()
                        .flatMap(Optional::stream)
                        .map(String::valueOf)
                        .collect(Collectors.joining()))
                : Optional.empty();
    }

    boolean isOverload(String shown) {
        String unsigned = text.isPresent() && shown.startsWith("-") ? shown.substring(1) : shown;
        return overload.stream().anyMatch(each -> matches(each, unsigned));
    }

    /** Whether it may stand there in any function: where digits have codes of their own, a blank or a letter may. */
    boolean mayBeShown(String shown) {
        boolean letters = text.isPresent() || coding instanceof Coding.Table;
        return letters || isNumber(shown) || isOverload(shown);
    }

    boolean isNumber(String shown) {
        return (text.isPresent() ? PLAIN : DIGITS).matcher(shown).matches();
    }

    private static boolean matches(String pattern, String shown) {
        if (pattern.length() != shown.length()) {
            return false;
        }
        for (int i = 0; i < pattern.length(); i++) {
            boolean any = pattern.charAt(i) == '*' && !Character.isDigit(shown.charAt(i));
            if (!any && pattern.charAt(i) != shown.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}
