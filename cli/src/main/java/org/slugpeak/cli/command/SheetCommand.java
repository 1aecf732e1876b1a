package org.slugpeak.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.feed.GeneratorMet;
import org.slugpeak.cli.feed.GeneratorSession;
import org.slugpeak.cli.open.OpenedSource;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.DialOptions;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.quantity.Power;
import org.slugpeak.cli.quantity.Resistance;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.cli.safety.SafetyOptions;
import org.slugpeak.cli.safety.SafetyQuestions;
import org.slugpeak.cli.sheet.SheetGuide;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.sheet.InputReach;
import org.slugpeak.core.sheet.SheetPlan;
import org.slugpeak.core.sheet.SheetProgress;
import org.slugpeak.core.sheet.Station;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slugpeak sheet}: figures by which a set is compared with itself, before and after the work. */
@Command(name = "sheet", mixinStandardHelpOptions = true)
public final class SheetCommand implements Callable<Integer> {

    /** Above rest, at a detector: where its law is straight and gain control is at rest (common practice, no source). */
    private static final double DETECTOR_VOLTS = 1;

    private static final double WORST_ATTENUATOR_DB = 20;

    /** As of every command whose work was not done. */
    private static final int UNFINISHED_CODE = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", descriptionKey = "PLAN")
    private String planName = "";

    @Option(names = "--from", paramLabel = "SOURCE", required = true)
    private String from = "";

    @Option(names = "--after")
    private boolean after;

    @Option(names = "--point", paramLabel = "voice-coil|detector")
    private Optional<String> point = Optional.empty();

    @Option(names = "--load", paramLabel = "OHM", converter = Resistance.class, defaultValue = "3.2")
    private double loadOhms;

    @Option(names = "--power", paramLabel = "W", converter = Power.class, defaultValue = "50mW")
    private double powerWatts;

    @Option(names = "--attenuator", paramLabel = "DB")
    private Optional<Double> attenuatorDb = Optional.empty();

    @Option(names = "--if", paramLabel = "F", converter = Frequency.class)
    private Optional<Double> intermediateHz = Optional.empty();

    @Mixin
    private SafetyOptions safety = new SafetyOptions();

    @Mixin
    private SourceOptions sourceOptions = new SourceOptions();

    @Mixin
    private GeneratorOptions generatorOptions = new GeneratorOptions();

    @Mixin
    private DialOptions dial = new DialOptions();

    @Mixin
    private OutputOptions outputOptions = new OutputOptions();

    @Mixin
    private PageOptions page = new PageOptions();

    @Override
    public Integer call() throws BridgeException {
        attenuatorDb.ifPresent(db -> require(
                db >= 0 && db <= WORST_ATTENUATOR_DB, "--attenuator takes 0 to " + (int) WORST_ATTENUATOR_DB + " dB"));
        SourceAddress address = new SourceAddress(from);
        WayIn way = WayIn.of(address);
        require(
                !way.has(WayIn.Trait.RECORDED),
                "a sheet is measured while the set plays: --from names a meter, sound or sim:plan");
        MeterPoint at = point(way);
        OptionalDouble given = intermediateHz.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        Plan plan = PlanFiles.load(planName, given);
        List<Station> stations = SheetPlan.of(plan, at);
        if (stations.isEmpty()) {
            throw new BadInput(
                    "plan " + plan.name() + " has no step that is set on a signal below 30 MHz, so there is no dial to"
                            + " measure at: give one with generator-kHz and dial-kHz alike");
        }
        sourceOptions.rehearse(plan);
        sourceOptions.measureAt(at);
        SheetProgress progress = new SheetProgress(stations, conditions(at, stations.get(0)), reach(stations));
        List<String> answers = way.has(WayIn.Trait.SIMULATED)
                ? List.of(AskPhrase.NOTHING_IS_LIVE.of())
                : safety.answered(spec.commandLine(), SafetyQuestions.atTerminal(outputOptions.voice()::say));
        return run(address, stations, new SheetGuide(plan.name(), answers, at, progress), progress);
    }

    private int run(SourceAddress address, List<Station> stations, SheetGuide guide, SheetProgress progress)
            throws BridgeException {
        SessionParts parts = new SessionParts(
                address.text(),
                () -> WayIn.of(address).open(address, sourceOptions),
                this::outputs,
                AnalysisSettings.following(PeakSettings.defaults()),
                guide);
        GeneratorSession generator = new GeneratorSession(
                generatorOptions,
                OptionalDouble.empty(),
                reach -> GeneratorMet.refuseBeyond(reach, frequenciesHz(stations)));
        int code = generator.run(parts, spec.commandLine().getErr());
        String outcome = guide.outcome(outputOptions.logFile());
        spec.commandLine().getErr().println(outcome);
        outputOptions.voice().say(outcome);
        outputOptions.voice().finish();
        return code == 0 && !progress.isOver() ? UNFINISHED_CODE : code;
    }

    private void require(boolean met, String otherwise) {
        if (!met) {
            throw new ParameterException(spec.commandLine(), otherwise);
        }
    }

    private MeterPoint point(WayIn way) {
        boolean heard = way.has(WayIn.Trait.AUDIO)
                || way.has(WayIn.Trait.SIMULATED)
                || sourceOptions.asked().equals(Measurand.AC_VOLTS);
        MeterPoint usual = heard ? MeterPoint.VOICE_COIL : MeterPoint.DETECTOR;
        MeterPoint chosen = point.isEmpty()
                ? usual
                : List.of(MeterPoint.VOICE_COIL, MeterPoint.DETECTOR).stream()
                        .filter(each -> each.code().equals(point.get()))
                        .findFirst()
                        .orElseThrow(() -> new ParameterException(
                                spec.commandLine(), "--point takes voice-coil or detector, not " + point.get()));
        require(
                chosen == MeterPoint.VOICE_COIL || !way.has(WayIn.Trait.AUDIO),
                "a sound input hears the voice coil, not the detector");
        return chosen;
    }

    private Conditions conditions(MeterPoint at, Station first) {
        boolean heard = at == MeterPoint.VOICE_COIL;
        return new Conditions(
                after ? Occasion.AFTER : Occasion.BEFORE,
                heard ? OutputPower.volts(powerWatts, loadOhms) : DETECTOR_VOLTS,
                heard ? loadOhms : Double.NaN,
                first.setup().dummyAntenna(),
                attenuatorDb.orElse(Double.NaN));
    }

    private static List<Double> frequenciesHz(List<Station> stations) {
        return stations.stream()
                .flatMap(station -> station.frequenciesHz().stream())
                .toList();
    }

    private InputReach reach(List<Station> stations) throws BridgeException {
        generatorOptions.refuseWrongUsage();
        Optional<DialScale> scale = dial.scale(
                generatorOptions, frequenciesHz(stations), spec.commandLine().getErr());
        if (!generatorOptions.isGiven()) {
            return InputReach.BY_HAND.marked(scale);
        }
        GeneratorReach reach = generatorOptions.reach();
        if (!reach.setsLevel() || !reach.modulates()) {
            throw new BadInput("a sheet wants a generator that sets its level and its modulation, and "
                    + generatorOptions.kind() + " does not: leave --generator out and set it by hand");
        }
        return InputReach.obeying(reach.lowestEmfVolts(), reach.highestEmfVolts());
    }

    private List<SessionOutput> outputs(OpenedSource source) throws BridgeException {
        String unit = source.source().measurand().unit();
        if (!unit.isEmpty() && !unit.equals(Measurand.AC_VOLTS.unit())) {
            throw new BadInput("readings count in " + unit
                    + ", and a sheet wants volts: for sound, slugpeak check --from " + from + " --volts V first");
        }
        return generatorOptions.isGiven()
                ? outputOptions.openLive(page, KeyAction.SKIP)
                : outputOptions.openLive(page, KeyAction.SKIP, KeyAction.COUNTER);
    }
}
