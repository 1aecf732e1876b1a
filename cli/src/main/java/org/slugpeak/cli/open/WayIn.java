package org.slugpeak.cli.open;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.run.Interruption;

/**
 * A way in: which addresses name it, what is special about it, and how it is opened. A new one is a line in {@link #ALL}.
 *
 * @param names whether a text, in lower case, is an address of it
 * @param traits what is special about it
 * @param opener opens an address; what it needs is loaded only then
 */
public record WayIn(Predicate<String> names, Set<Trait> traits, Opener opener) {

    /** What commands ask of a way in. */
    public enum Trait {
        /** Text with readings. */
        TEXT,
        /** Samples of sound. */
        AUDIO,
        /** A meter, a board: something with a language. */
        INSTRUMENT,
        /** A bench that is computed. */
        SIMULATED,
        /** All is there already: nobody can be waited for. */
        RECORDED,
        /** A session log, which brings its own settings. */
        LOG,
        /** The source says itself when the next adjuster is begun. */
        TELLS_ADJUSTERS
    }

    /** Opens an address. */
    @FunctionalInterface
    interface Opener {

        OpenedSource open(SourceAddress address, SourceOptions options) throws BridgeException;
    }

    private static final List<String> TEXT_FILES =
            List.of(".csv", ".tsv", ".tab", ".txt", ".dat", ".asc", ".prn", ".log");

    /** The first that an address names is taken; the last takes what is left. */
    private static final List<WayIn> ALL = List.of(
            new WayIn("-"::equals, Set.of(Trait.TEXT), SourceOpener::standardInput),
            new WayIn(named("sim"), Set.of(Trait.SIMULATED, Trait.TELLS_ADJUSTERS), SourceOpener::simulation),
            new WayIn(named("sound"), Set.of(Trait.AUDIO), SourceOpener::soundInput),
            new WayIn(
                    text -> text.endsWith(".jsonl"),
                    Set.of(Trait.RECORDED, Trait.LOG, Trait.TELLS_ADJUSTERS),
                    SourceOpener::sessionLog),
            new WayIn(text -> text.endsWith(".wav"), Set.of(Trait.AUDIO, Trait.RECORDED), SourceOpener::audioFile),
            new WayIn(
                    text -> TEXT_FILES.stream().anyMatch(text::endsWith),
                    Set.of(Trait.TEXT, Trait.RECORDED),
                    SourceOpener::textFile),
            new WayIn(text -> true, Set.of(Trait.INSTRUMENT), SourceOpener::instrument));

    /** The way in that an address names; a file with another ending is text. */
    public static WayIn of(SourceAddress address) {
        String lower = address.text().toLowerCase(Locale.ROOT);
        Stream<WayIn> named = ALL.stream().filter(way -> way.names.test(lower));
        WayIn first = named.findFirst().orElseThrow();
        return first.has(Trait.INSTRUMENT) && isFile(address.text())
                ? ALL.stream()
                        .filter(way -> way.has(Trait.TEXT) && way.has(Trait.RECORDED))
                        .findFirst()
                        .orElseThrow()
                : first;
    }

    public boolean has(Trait trait) {
        return traits.contains(trait);
    }

    public OpenedSource open(SourceAddress address, SourceOptions options) throws BridgeException {
        OptionScope.check(options.given(), address);
        Interruption.takeCare();
        return opener.open(address, options);
    }

    private static Predicate<String> named(String word) {
        return text -> text.equals(word) || text.startsWith(word + ":");
    }

    private static boolean isFile(String text) {
        try {
            return Files.isRegularFile(Path.of(text));
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
