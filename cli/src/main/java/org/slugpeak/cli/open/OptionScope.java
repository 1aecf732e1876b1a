package org.slugpeak.cli.open;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.open.WayIn.Trait;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/**
 * Which options speak of which way in. One that speaks of another is refused: left unsaid, it would be taken as obeyed.
 *
 * @param words what the options are for
 * @param traits one of them the way in must have
 * @param options their names
 */
public record OptionScope(String words, Set<Trait> traits, Set<String> options) {

    private static final List<OptionScope> ALL = List.of(
            new OptionScope("an instrument", Set.of(Trait.INSTRUMENT), Set.of("--meter", "--baud", "--ac", "--range")),
            new OptionScope(
                    "readings as text",
                    Set.of(Trait.TEXT),
                    Set.of("--rate", "--value-column", "--time-column", "--unit")),
            new OptionScope("readings as text, or a log of them", Set.of(Trait.TEXT, Trait.LOG), Set.of("--steps")),
            new OptionScope(
                    "readings as text and instruments",
                    Set.of(Trait.TEXT, Trait.INSTRUMENT),
                    Set.of("--decimal-comma")),
            new OptionScope("a simulated set", Set.of(Trait.SIMULATED), Set.of("--speed", "--seed")),
            new OptionScope(
                    "audio", Set.of(Trait.AUDIO), Set.of("--mode", "--channel", "--interval", "--response", "--ohms")));

    /**
     * Looks for an option that says nothing about the source.
     *
     * @param given what the user typed
     * @param address the source
     * @throws TypeConversionException with one line that names the first such option
     */
    static void check(ParseResult given, SourceAddress address) {
        Set<Trait> traits = WayIn.of(address).traits();
        for (OptionSpec option : given.matchedOptions()) {
            for (OptionScope scope : ALL) {
                if (scope.options.contains(option.longestName()) && Collections.disjoint(scope.traits, traits)) {
                    throw new TypeConversionException(option.longestName() + " is for " + scope.words + ", which '"
                            + address.text() + "' is not: leave it out");
                }
            }
        }
    }
}
