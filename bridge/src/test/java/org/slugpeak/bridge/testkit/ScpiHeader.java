package org.slugpeak.bridge.testkit;

import java.util.Locale;

/**
 * A header as SCPI-1999 volume 1 section 6.2 writes it: capitals are the short form; a meter takes the short form or the long
 * one, in any case, and nothing between.
 */
record ScpiHeader(String written) {

    boolean matches(String received) {
        String[] mine = written.split(":", -1);
        String[] theirs = (received.startsWith(":") ? received.substring(1) : received).split(":", -1);
        if (mine.length != theirs.length) {
            return false;
        }
        for (int i = 0; i < mine.length; i++) {
            if (!matches(mine[i], theirs[i].toUpperCase(Locale.ROOT))) {
                return false;
            }
        }
        return true;
    }

    private static boolean matches(String node, String received) {
        String shortForm = node.replaceAll("[a-z]", "");
        return received.equals(shortForm) || received.equals(node.toUpperCase(Locale.ROOT));
    }
}
