package org.slugpeak.cli.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.sim.Demo;
import org.slugpeak.bridge.sim.DemoSettings;
import org.slugpeak.bridge.sim.Tempo;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.open.OpenedSource;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.SessionRunner;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.run.SinkOutput;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.DemoNarrator;
import org.slugpeak.cli.words.DemoTable;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Plays the alignment of an invented set on a simulated bench. */
@Command(name = "demo", mixinStandardHelpOptions = true)
public final class DemoCommand implements Callable<Integer> {

    private static final double DEGREES_A_STROKE = 10;
    private static final double FASTEST = 1000;

    @Option(names = "--hand", paramLabel = "self|keys", converter = TurnerConverter.class)
    private DemoSettings.Turner turner = DemoSettings.Turner.SIMULATED;

    @Option(names = "--speed", paramLabel = "TIMES")
    private double speed = 1;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Option(names = "--fault", paramLabel = "NAME", converter = FaultConverter.class)
    private Optional<Fault> fault = Optional.empty();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Mixin
    private PageOptions page = new PageOptions();

    @Override
    public Integer call() throws BridgeException {
        if (!(speed > 0 && speed <= FASTEST)) {
            throw new TypeConversionException("--speed takes more than 0 and at most 1000, not " + speed);
        }
        DemoSettings settings = new DemoSettings(seed, turner, fault);
        Demo demo = Demo.create(settings, Tempo.ofClock(Ticker.system(), speed), new DemoNarrator());
        Set<KeyAction> more = fault.isPresent() ? Set.of(KeyAction.REPAIRED) : Set.of();
        int exitCode = SessionRunner.run(new SessionParts(
                "sim",
                () -> new OpenedSource(
                        demo.source(), List.of(new SinkOutput(demo.source().hand()))),
                source -> outputOptions.openLive(page, more, keys(demo), first()),
                AnalysisSettings.following(PeakSettings.defaults()),
                NumberedAdjusters.toldBySource()));
        PrintStream table = outputOptions.isJson() ? System.err : System.out;
        table.println();
        DemoTable.lines(demo.outcome()).forEach(table::println);
        return exitCode;
    }

    /** Whoever turns the slugs is told who turns the generator. */
    private Optional<String> first() {
        return turner == DemoSettings.Turner.KEYS ? Optional.of(AskPhrase.YOUR_HAND.of()) : Optional.empty();
    }

    private Map<KeyAction, Runnable> keys(Demo demo) {
        if (turner == DemoSettings.Turner.SIMULATED) {
            return Map.of();
        }
        return Map.of(
                KeyAction.TURN_LEFT, () -> demo.turn(-DEGREES_A_STROKE),
                KeyAction.TURN_RIGHT, () -> demo.turn(DEGREES_A_STROKE),
                KeyAction.NEXT, demo::next);
    }

    /** Reads the word after {@code --hand}. */
    static final class TurnerConverter implements ITypeConverter<DemoSettings.Turner> {
        @Override
        public DemoSettings.Turner convert(String word) {
            return switch (word) {
                case "self" -> DemoSettings.Turner.SIMULATED;
                case "keys" -> DemoSettings.Turner.KEYS;
                default -> throw new TypeConversionException("'" + word + "' is neither self nor keys");
            };
        }
    }

    /** Reads the word after {@code --fault}. */
    static final class FaultConverter implements ITypeConverter<Fault> {
        @Override
        public Fault convert(String word) {
            try {
                return Fault.ofCode(word);
            } catch (Refused e) {
                throw new TypeConversionException(e.reason());
            }
        }
    }
}
