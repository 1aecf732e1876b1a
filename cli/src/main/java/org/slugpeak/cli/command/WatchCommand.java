package org.slugpeak.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.display.Console;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.open.RecordedGuide;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.SessionRunner;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.open.WayIn.Trait;
import org.slugpeak.cli.option.AnalysisOptions;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Watches a meter. */
@Command(name = "watch", mixinStandardHelpOptions = true)
public final class WatchCommand implements Callable<Integer> {

    @Option(names = "--from", required = true, paramLabel = "SOURCE")
    private String from = "";

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private AnalysisOptions analysisOptions = new AnalysisOptions();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Mixin
    private PageOptions page = new PageOptions();

    @Option(names = "--stay")
    private boolean stay;

    @Option(names = "--point", paramLabel = "POINT", converter = PointConverter.class)
    private Optional<MeterPoint> point = Optional.empty();

    @Override
    public Integer call() throws BridgeException {
        SourceAddress address = new SourceAddress(from);
        WayIn way = WayIn.of(address);
        boolean typed = way.has(Trait.TEXT) && !way.has(Trait.RECORDED) && Console.isInputTerminal();
        AnalysisSettings settings = analysisOptions.settings(typed);
        if (settings.stepped() && point.isPresent()) {
            throw new TypeConversionException(
                    "--point goes by readings that follow the hand: leave it out with --steps");
        }
        sourceOptions.takeSteps(settings.stepped());
        return SessionRunner.run(new SessionParts(
                address.text(),
                () -> way.open(address, sourceOptions),
                source -> typed ? outputOptions.openTyped(page) : outputs(way, settings.stepped()),
                settings,
                guide(way, settings.stepped()),
                opening()));
    }

    private List<Instruction> opening() {
        return point.map(it -> List.<Instruction>of(new Instruction.Level(LevelCommand.at(it))))
                .orElse(List.of());
    }

    private List<SessionOutput> outputs(WayIn way, boolean stepped) throws BridgeException {
        if (way.has(Trait.RECORDED)) {
            return outputOptions.open();
        }
        return stepped
                ? outputOptions.openLive(page, Set.of(), Map.of(), Optional.empty())
                : outputOptions.openLive(page, KeyAction.AGAIN);
    }

    private Guide guide(WayIn way, boolean stepped) {
        if (way.has(Trait.LOG)) {
            return new RecordedGuide();
        }
        if (way.has(Trait.TELLS_ADJUSTERS)) {
            return NumberedAdjusters.toldBySource();
        }
        return stay || stepped ? NumberedAdjusters.byKey() : NumberedAdjusters.byDwell();
    }

    /** Reads the word after {@code --point}. */
    static final class PointConverter implements ITypeConverter<MeterPoint> {
        @Override
        public MeterPoint convert(String word) {
            try {
                return MeterPoint.ofCode(word);
            } catch (Refused e) {
                throw new TypeConversionException(e.reason());
            }
        }
    }
}
