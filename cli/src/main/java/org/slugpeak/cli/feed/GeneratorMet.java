package org.slugpeak.cli.feed;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.core.generator.GeneratorReach;

/** Hears what a generator can do, as soon as it is open and before anything of it is set. */
@FunctionalInterface
public interface GeneratorMet {

    /**
     * It is open.
     *
     * @param reach what it can do
     * @throws BridgeException where that is too little, with one line that says what to do
     */
    void reach(GeneratorReach reach) throws BridgeException;

    /**
     * Refuses a generator that cannot give what will be wanted.
     *
     * @param reach what it can do
     * @param wantedHz every frequency that will be wanted, Hz
     * @throws BadConfiguration where one is out of its reach
     */
    static void refuseBeyond(GeneratorReach reach, List<Double> wantedHz) throws BadConfiguration {
        Optional<Double> beyond =
                wantedHz.stream().filter(hz -> !reach.gives(hz)).findFirst();
        if (beyond.isPresent()) {
            throw new BadConfiguration(String.format(
                    Locale.ROOT,
                    "the generator goes from %s to %s kHz, and %s kHz will be wanted: leave that out (--only, --span), or set it by hand"
                            + " without --generator",
                    Frequencies.number(reach.lowestHz() / 1e3),
                    Frequencies.number(reach.highestHz() / 1e3),
                    Frequencies.number(beyond.get() / 1e3)));
        }
    }
}
