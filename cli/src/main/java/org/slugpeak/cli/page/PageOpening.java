package org.slugpeak.cli.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.PageAddress;
import org.slugpeak.cli.words.PagePhrase;
import picocli.CommandLine.TypeConversionException;

/** Begins to serve a page and says where; apart from its options, so that nobody pays for a server who asks for none. */
final class PageOpening {

    private static final int HIGHEST_PORT = 65535;

    private PageOpening() {}

    static SecondScreen open(int port, Optional<String> host, boolean withKeys, Set<KeyAction> useful, PrintStream err)
            throws BadConfiguration {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new TypeConversionException("--page takes a port from 0 to " + HIGHEST_PORT + ", not " + port);
        }
        PagePlace place = host.isPresent() ? PagePlace.at(host.get(), port) : PagePlace.here(port);
        HttpServer server = bind(place);
        PageToken token = PageToken.fresh();
        int opened = server.getAddress().getPort();
        PageAddress address = QrRows.of(place.url(opened, token));
        tell(place, address, withKeys, err);
        Door door = new Door(token, place.hosts(opened));
        return SecondScreen.serve(server, door, address, withKeys ? useful : Set.of(), err, Ticker.system());
    }

    private static HttpServer bind(PagePlace place) throws BadConfiguration {
        try {
            return PageServer.bind(place.socket());
        } catch (IOException refused) {
            throw place.taken(refused);
        }
    }

    private static void tell(PagePlace place, PageAddress address, boolean withKeys, PrintStream err) {
        boolean blocks = Charset.defaultCharset().newEncoder().canEncode('\u2580');
        (blocks ? address.halves() : address.whole()).forEach(err::println);
        err.println(PagePhrase.STANDS_AT.of(address.url()));
        PagePhrase seen = withKeys ? PagePhrase.ON_NETWORK_WITH_KEYS : PagePhrase.ON_NETWORK;
        err.println((place.isHereOnly() ? PagePhrase.HERE_ONLY : seen).of());
    }
}
