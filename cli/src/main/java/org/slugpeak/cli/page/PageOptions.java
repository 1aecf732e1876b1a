package org.slugpeak.cli.page;

import java.io.PrintStream;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.display.KeyAction;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options of every command whose session a browser can see, to be mixed in. One thread at a time. */
public final class PageOptions {

    /** Above those that need rights, and easy to remember at an IF of 455 kHz. */
    static final String USUAL_PORT = "8455";

    @Option(names = "--page", paramLabel = "PORT", arity = "0..1", fallbackValue = USUAL_PORT)
    private Optional<Integer> port = Optional.empty();

    @Option(names = "--page-host", paramLabel = "ADDRESS")
    private Optional<String> host = Optional.empty();

    @Option(names = "--page-keys")
    private boolean withKeys;

    /**
     * Whether there is to be a page.
     *
     * @return true for {@code --page}
     */
    public boolean isAsked() {
        return port.isPresent();
    }

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
    public Optional<SecondScreen> open(Set<KeyAction> useful, PrintStream err) throws BadConfiguration {
        if (!isAsked()) {
            refuseAlone();
            return Optional.empty();
        }
        return Optional.of(PageOpening.open(port.get(), host, withKeys, useful, err));
    }

    private void refuseAlone() {
        if (host.isPresent() || withKeys) {
            throw new TypeConversionException("--page-host and --page-keys speak of the page: say --page too");
        }
    }
}
