package org.slugpeak.bridge.text;

import java.util.List;

/** Lists of what was found wrong: nobody reads a thousand of them. Stateless. */
public final class Listing {

    private static final int MOST = 20;

    private Listing() {}

    /**
     * The first few, and how many more there are.
     *
     * @param all one text each
     * @param separator between them
     * @return all of them where they are few
     */
    public static String of(List<String> all, String separator) {
        if (all.size() <= MOST) {
            return String.join(separator, all);
        }
        return String.join(separator, all.subList(0, MOST)) + separator + "and " + (all.size() - MOST) + " more";
    }
}
