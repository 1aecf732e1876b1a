package org.slugpeak.cli;

import java.util.List;
import java.util.Set;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.source.SourceAddress.Kind;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/**
 * Which options speak of which way in. One that speaks of another is refused: left unsaid, it would be taken as obeyed.
 *
 * @param words what the options are for
 * @param kinds the ways in
 * @param options their names
 */
record OptionScope(String words, Set<Kind> kinds, Set<String> options) {

    private static final List<OptionScope> ALL = List.of(
            new OptionScope("a serial instrument", Set.of(Kind.SERIAL), Set.of("--meter", "--baud", "--ac", "--range")),
            new OptionScope(
                    "readings as text", Set.of(Kind.CSV, Kind.STANDARD_INPUT), Set.of("--decimal-comma", "--rate")),
            new OptionScope(
                    "readings as text, or a log of them",
                    Set.of(Kind.CSV, Kind.STANDARD_INPUT, Kind.SESSION_LOG),
                    Set.of("--steps")),
            new OptionScope("a simulated set", Set.of(Kind.SIMULATION), Set.of("--speed", "--seed")),
            new OptionScope(
                    "audio",
                    Set.of(Kind.WAV, Kind.SOUND),
                    Set.of("--mode", "--channel", "--interval", "--response", "--ohms")));

    /**
     * Looks for an option that says nothing about the source.
     *
     * @param given what the user typed
     * @param address the source
     * @throws TypeConversionException with one line that names the first such option
     */
    static void check(ParseResult given, SourceAddress address) {
        for (OptionSpec option : given.matchedOptions()) {
            for (OptionScope scope : ALL) {
                if (scope.options.contains(option.longestName()) && !scope.kinds.contains(address.kind())) {
                    throw new TypeConversionException(option.longestName() + " is for " + scope.words + ", which '"
                            + address.text() + "' is not: leave it out");
                }
            }
        }
    }
}
