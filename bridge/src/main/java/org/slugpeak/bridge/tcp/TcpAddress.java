package org.slugpeak.bridge.tcp;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code tcp:HOST:PORT}, or {@code tcp:HOST} for port 5025, where a host with colons stands in square brackets. Immutable.
 *
 * @param host name or number of the machine
 * @param port 1 to 65535
 */
record TcpAddress(String host, int port) {

    /** SCPI over a raw socket: the number that IANA has registered as scpi-raw. */
    static final int USUAL_PORT = 5025;

    private static final int HIGHEST_PORT = 65_535;
    private static final Pattern FORM =
            Pattern.compile("(?i)tcp:(?:\\[([0-9a-f:.%a-z]+)\\]|([^:\\[\\]\\s]+))(?::(\\d{1,5}))?");

    static Optional<TcpAddress> parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        String host = form.group(1) == null ? form.group(2) : form.group(1);
        int port = form.group(3) == null ? USUAL_PORT : Integer.parseInt(form.group(3));
        return port < 1 || port > HIGHEST_PORT ? Optional.empty() : Optional.of(new TcpAddress(host, port));
    }
}
