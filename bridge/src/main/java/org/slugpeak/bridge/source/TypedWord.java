package org.slugpeak.bridge.source;

import java.util.Optional;

/** What a person who types values may type in place of one. Immutable; any thread may use it. */
public enum TypedWord {
    /** The last value was a mistake: take it back. */
    UNDO("u"),
    /** The next adjuster is begun. */
    NEXT("r"),
    /** The same adjuster is begun once more. */
    AGAIN("b"),
    /** The adjuster is left as it is, and the next begun. */
    SKIP("k"),
    /** The session ends. */
    QUIT("q");

    private final String word;

    TypedWord(String word) {
        this.word = word;
    }

    /**
     * What is typed: the letter that is the key for it where keys are read.
     *
     * @return one lower-case letter
     */
    public String word() {
        return word;
    }

    /**
     * The word in a line.
     *
     * @param line as typed; blanks around it and capitals do not count
     * @return empty where the line holds something else
     */
    public static Optional<TypedWord> parse(String line) {
        for (TypedWord typed : values()) {
            if (typed.word.equalsIgnoreCase(line.strip())) {
                return Optional.of(typed);
            }
        }
        return Optional.empty();
    }
}
