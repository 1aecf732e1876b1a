package org.slugpeak.cli.words;

/** How the codes of values are said, which a log and the options spell always alike. All methods are pure. */
public final class CodeWords {

    private CodeWords() {}

    /**
     * A code as it is said in today's language.
     *
     * @param code of a value, or a number
     * @return its word; itself where it is no code
     */
    public static String of(String code) {
        return Language.today().find("code." + code).orElse(code);
    }
}
