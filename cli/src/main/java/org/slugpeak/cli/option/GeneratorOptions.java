package org.slugpeak.cli.option;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.slugpeak.bridge.generator.DescribedGenerator;
import org.slugpeak.bridge.generator.Generators;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.quantity.SignalLevel;
import org.slugpeak.core.generator.GeneratorReach;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** A generator that is set from here: where it is, and what it understands. */
public final class GeneratorOptions {

    @Option(names = "--generator", paramLabel = "ADDRESS")
    private Optional<String> address = Optional.empty();

    @Option(names = "--generator-kind", paramLabel = "NAME|FILE.toml")
    private Optional<String> kind = Optional.empty();

    @Option(names = "--generator-baud", paramLabel = "BITS/S")
    private Optional<Integer> baud = Optional.empty();

    @Option(names = "--generator-level", paramLabel = "LEVEL", converter = SignalLevel.class)
    private Optional<Double> emfVolts = Optional.empty();

    /** Whether a generator is set from here. */
    public boolean isGiven() {
        return address.isPresent();
    }

    /** Which description says what it understands. */
    public String kind() {
        return kind.orElse(Generators.SHIPPED.get(0));
    }

    /** Where it is; to be asked where one is given. */
    public String address() {
        return address.orElseThrow();
    }

    /** With which level it begins, volts EMF; empty where nobody said. */
    public OptionalDouble emfVolts() {
        return emfVolts.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** What it can do. */
    public GeneratorReach reach() throws BridgeException {
        return Generators.reach(kind());
    }

    /** Whether there is one, and its level is set from here. */
    public boolean setsLevel() throws BridgeException {
        return isGiven() && reach().setsLevel();
    }

    /**
     * Opens it; whoever asks leaves it.
     *
     * @throws BridgeException where it cannot be opened or does not answer
     */
    public DescribedGenerator open() throws BridgeException {
        refuseWrongUsage();
        return Generators.open(
                address(), kind(), baud.map(OptionalInt::of).orElse(OptionalInt.empty()), Ticker.system());
    }

    /** Refuses what says nothing without a generator, and a speed that is none. */
    public void refuseWrongUsage() {
        if (address.isEmpty() && (kind.isPresent() || baud.isPresent() || emfVolts.isPresent())) {
            throw new TypeConversionException(
                    "--generator-kind, --generator-baud and --generator-level go with --generator ADDRESS: give it, too");
        }
        if (baud.isPresent() && baud.get() <= 0) {
            throw new TypeConversionException("--generator-baud takes a number above 0, not " + baud.get());
        }
    }
}
