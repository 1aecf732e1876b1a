package org.slugpeak.cli.page;

import java.util.Set;

/**
 * Decides who gets in. The token is looked at first, and for everything alike; then whether the asker calls this server by its own name, which a
 * page elsewhere that was led here by a false name does not; then whether the request comes from this page. Immutable; any thread may use it.
 *
 * @param token in the address
 * @param hosts names and port under which this server may be called
 */
record Door(PageToken token, Set<String> hosts) {

    /** What is to be done with a request. */
    enum Entry {
        PAGE,
        FILE,
        EVENTS,
        KEY,
        /** The address lacks its last stroke, without which the names of files beside the page would go wrong. */
        TO_PAGE,
        WRONG_TOKEN,
        /** From another page, or under another name. */
        FOREIGN,
        WRONG_METHOD
    }

    private static final String EVENTS = "events";
    private static final String KEYS = "keys";

    /** A page elsewhere cannot send this without asking first, which nobody here says yes to. */
    private static final String SENT_TYPE = "application/json";

    Entry entry(Asked asked) {
        String[] parts = asked.path().split("/", 3);
        if (parts.length < 2 || !parts[0].isEmpty() || !token.is(parts[1])) {
            return Entry.WRONG_TOKEN;
        }
        if (!asked.host().filter(hosts::contains).isPresent()) {
            return Entry.FOREIGN;
        }
        return parts.length == 2 ? Entry.TO_PAGE : entry(asked, parts[2]);
    }

    private Entry entry(Asked asked, String name) {
        boolean sends = name.equals(KEYS);
        if (!asked.method().equals(sends ? "POST" : "GET")) {
            return Entry.WRONG_METHOD;
        }
        if (sends) {
            return isOwn(asked) && asked.origin().isPresent() && asked.type().equals(SENT_TYPE)
                    ? Entry.KEY
                    : Entry.FOREIGN;
        }
        if (name.isEmpty()) {
            return isOwn(asked) || isOpenedByPerson(asked) ? Entry.PAGE : Entry.FOREIGN;
        }
        if (!isOwn(asked)) {
            return Entry.FOREIGN;
        }
        return name.equals(EVENTS) ? Entry.EVENTS : Entry.FILE;
    }

    private boolean isOwn(Asked asked) {
        boolean origin = asked.origin()
                .map(it -> it.startsWith("http://") && hosts.contains(it.substring("http://".length())))
                .orElse(true);
        boolean site = asked.site()
                .map(it -> it.equals("same-origin") || it.equals("none"))
                .orElse(true);
        return origin && site;
    }

    /** Somebody may have followed the address from a message that was opened in a browser. */
    private static boolean isOpenedByPerson(Asked asked) {
        return asked.origin().isEmpty()
                && asked.destination().map("document"::equals).orElse(false);
    }

    /** The part of a path behind the token. */
    static String name(Asked asked) {
        return asked.path().substring(asked.path().indexOf('/', 1) + 1);
    }
}
