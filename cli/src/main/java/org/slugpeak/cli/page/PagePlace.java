package org.slugpeak.cli.page;

import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.slugpeak.bridge.source.BadConfiguration;

/**
 * Where the page is served: one address of this computer, never all of them at once. Immutable; any thread may use it.
 *
 * @param address listened at
 * @param name as the user called it; may be empty
 * @param port 0 for any
 */
record PagePlace(InetAddress address, String name, int port) {

    /** For this computer alone. */
    static PagePlace here(int port) {
        return new PagePlace(InetAddress.getLoopbackAddress(), "localhost", port);
    }

    /** For whoever reaches that address of this computer. */
    static PagePlace at(String host, int port) throws BadConfiguration {
        try {
            Optional<InetAddress> address = known(host);
            boolean own = address.isPresent()
                    && !address.get().isAnyLocalAddress()
                    && NetworkInterface.getByInetAddress(address.get()) != null;
            if (!own) {
                throw new BadConfiguration(
                        host + " is no single address of this computer: --page-host takes one of " + addresses());
            }
            return new PagePlace(address.get(), host, port);
        } catch (SocketException failed) {
            throw new BadConfiguration(
                    "the addresses of this computer cannot be found out: leave --page-host out", failed);
        }
    }

    private static Optional<InetAddress> known(String host) {
        try {
            return Optional.of(InetAddress.getByName(host));
        } catch (UnknownHostException unknown) {
            return Optional.empty();
        }
    }

    private static String addresses() throws SocketException {
        return NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(it -> !it.isLinkLocalAddress())
                .map(it -> it.getHostAddress().replaceFirst("%.*", ""))
                .collect(Collectors.joining(", "));
    }

    boolean isHereOnly() {
        return address.isLoopbackAddress();
    }

    InetSocketAddress socket() {
        return new InetSocketAddress(address, port);
    }

    BadConfiguration taken(IOException refused) {
        return new BadConfiguration(
                "port " + port + " cannot be opened for the page (" + refused.getMessage()
                        + "): choose another, --page " + (port % 65535 + 1),
                refused);
    }

    /** What a browser may call this server, with the port that was opened. */
    Set<String> hosts(int opened) {
        Set<String> hosts = new LinkedHashSet<>();
        hosts.add(literal() + ":" + opened);
        Optional.of(name)
                .filter(it -> !it.isEmpty() && it.indexOf(':') < 0)
                .ifPresent(it -> hosts.add(it + ":" + opened));
        return hosts;
    }

    /** The address of the page; by number, so that no other computer answers to a name. */
    String url(int opened, PageToken token) {
        return "http://" + literal() + ":" + opened + "/" + token.text() + "/";
    }

    private String literal() {
        String text = address.getHostAddress().replaceFirst("%.*", "");
        return address instanceof Inet6Address ? "[" + text + "]" : text;
    }
}
