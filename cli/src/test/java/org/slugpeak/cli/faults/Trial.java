package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.SplittableRandom;

/** One kind of fault. */
interface Trial {

    /** One word, for the table and to choose it by. */
    String name();

    /** How often it is tried in a whole campaign. */
    int count();

    /**
     * Tries once.
     *
     * @param random all chance comes from here, so that the same seed tries the same
     * @param folder empty, and thrown away
     * @return something to be told that is no failure; empty where there is nothing
     * @throws Exception whatever is thrown is a failure
     */
    String attempt(SplittableRandom random, Path folder) throws Exception;

    /** Fails the trial. */
    static void require(boolean met, String otherwise) {
        if (!met) {
            throw new AssertionError(otherwise);
        }
    }
}
