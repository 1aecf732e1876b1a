package org.slugpeak.cli.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.words.PagePhrase;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options of every command whose session a browser can see, to be mixed in. One thread at a time. */
public final class PageOptions {

    /** Above those that need rights, and easy to remember at an IF of 455 kHz. */
    static final String USUAL_PORT = "8455";

    private static final int HIGHEST_PORT = 65535;

    @Option(names = "--page", paramLabel = "PORT", arity = "0..1", fallbackValue = USUAL_PORT)
    private Optional<Integer> port = Optional.empty();

    @Option(names = "--page-host", paramLabel = "ADDRESS")
    private Optional<String> host = Optional.empty();

    @Option(names = "--page-keys")
    private boolean withKeys;

    /** What the command line says nothing about stays as usual. */
    public PageOptions() {}

    /**
     * Begins to serve, where that was asked for, and says where.
     *
     * @param useful the actions that the command sees to
     * @param err standard error
     * @return to be closed by the caller; empty where no page was asked for
     * @throws BadConfiguration where it cannot be served there
     */
    public Optional<SecondScreen> openSession(Set<KeyAction> useful, PrintStream err) throws BadConfiguration {
        return open(Keeping.OfSession::new, useful, err);
    }

    /**
     * The same for a response curve.
     *
     * @param byHand whether a person sets the generator
     * @param useful the actions that the command sees to
     * @param err standard error
     * @return to be closed by the caller; empty where no page was asked for
     * @throws BadConfiguration where it cannot be served there
     */
    public Optional<SecondScreen> openCurve(boolean byHand, Set<KeyAction> useful, PrintStream err)
            throws BadConfiguration {
        return open(() -> new Keeping.OfCurve(byHand), useful, err);
    }

    private Optional<SecondScreen> open(Supplier<Keeping> keeping, Set<KeyAction> useful, PrintStream err)
            throws BadConfiguration {
        if (port.isEmpty()) {
            refuseAlone();
            return Optional.empty();
        }
        if (port.get() < 0 || port.get() > HIGHEST_PORT) {
            throw new TypeConversionException("--page takes a port from 0 to " + HIGHEST_PORT + ", not " + port.get());
        }
        PagePlace place = host.isPresent() ? PagePlace.at(host.get(), port.get()) : PagePlace.here(port.get());
        HttpServer server = bind(place);
        PageToken token = PageToken.fresh();
        int opened = server.getAddress().getPort();
        tell(place, place.url(opened, token), err);
        Door door = new Door(token, place.hosts(opened));
        return Optional.of(
                SecondScreen.serve(server, door, keeping.get(), withKeys ? useful : Set.of(), err, Ticker.system()));
    }

    private void refuseAlone() {
        if (host.isPresent() || withKeys) {
            throw new TypeConversionException("--page-host and --page-keys speak of the page: say --page too");
        }
    }

    private static HttpServer bind(PagePlace place) throws BadConfiguration {
        try {
            return PageServer.bind(place.socket());
        } catch (IOException refused) {
            throw place.taken(refused);
        }
    }

    private void tell(PagePlace place, String url, PrintStream err) {
        QrRows.of(url, Charset.defaultCharset()).forEach(err::println);
        err.println(PagePhrase.STANDS_AT.of(url));
        PagePhrase seen = withKeys ? PagePhrase.ON_NETWORK_WITH_KEYS : PagePhrase.ON_NETWORK;
        err.println((place.isHereOnly() ? PagePhrase.HERE_ONLY : seen).of());
    }
}
