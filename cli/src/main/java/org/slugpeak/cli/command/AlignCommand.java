package org.slugpeak.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.cli.align.PlanGuide;
import org.slugpeak.cli.align.PlanSheet;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.feed.GeneratorMet;
import org.slugpeak.cli.feed.GeneratorSession;
import org.slugpeak.cli.open.SessionParts;
import org.slugpeak.cli.open.WayIn;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.option.DialOptions;
import org.slugpeak.cli.option.GeneratorOptions;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.option.SourceOptions;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.quantity.Frequency;
import org.slugpeak.cli.report.Facts;
import org.slugpeak.cli.safety.SafetyOptions;
import org.slugpeak.cli.safety.SafetyQuestions;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.ReportFact;
import org.slugpeak.cli.words.ShownPlan;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slugpeak align}: carries a plan out. */
@Command(name = "align", mixinStandardHelpOptions = true)
public final class AlignCommand implements Callable<Integer> {

    private static final double WIDEST_LIMIT_DB = 3;

    /** As of every command whose work was not done. */
    private static final int UNFINISHED_CODE = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", descriptionKey = "PLAN")
    private String planName = "";

    @Option(names = "--from", paramLabel = "SOURCE")
    private String from = "";

    @Option(names = "--show")
    private boolean show;

    @Option(names = "--if", paramLabel = "F", converter = Frequency.class)
    private Optional<Double> intermediateHz = Optional.empty();

    @Option(names = "--only", paramLabel = "STAGE")
    private Optional<String> only = Optional.empty();

    @Option(names = "--resume", paramLabel = "LOG")
    private List<Path> resume = List.of();

    @Option(names = "--round-limit", paramLabel = "DB")
    private Optional<Double> roundLimitDb = Optional.empty();

    @Option(names = "--no-rest")
    private boolean withoutRest;

    @Option(names = "--no-halving")
    private boolean withoutHalvings;

    @Option(names = "--note", paramLabel = "KEY=VALUE")
    private List<String> notes = List.of();

    @Option(names = "--law")
    private boolean law;

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
        OptionalDouble given = intermediateHz.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        Plan plan = marked(limited(chosen(PlanFiles.load(planName, given))));
        if (show) {
            PlanSheet.rows(plan, beginning(plan)).forEach(spec.commandLine().getOut()::println);
            return 0;
        }
        if (from.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--from SOURCE is missing: give it, or --show to see the plan only");
        }
        SourceAddress address = new SourceAddress(from);
        boolean simulated = WayIn.of(address).has(WayIn.Trait.SIMULATED);
        Optional<SafetyQuestions> questions =
                simulated ? Optional.empty() : SafetyQuestions.atTerminal(outputOptions.voice()::say);
        List<String> answers =
                simulated ? List.of(AskPhrase.NOTHING_IS_LIVE.of()) : safety.answered(spec.commandLine(), questions);
        Facts facts = facts(questions.filter(here -> safety.isOpen()));
        AlignmentProgress progress = beginning(plan);
        List<SessionRecord> earlier = logged(plan);
        progress.resume(earlier);
        if (progress.isOver()) {
            spec.commandLine().getErr().println(AskPhrase.THROUGH_ALREADY.of());
            return 0;
        }
        if (WayIn.of(address).has(WayIn.Trait.INSTRUMENT)) {
            ShownPlan.unreadable(plan, sourceOptions.asked())
                    .ifPresent(line -> spec.commandLine().getErr().println(AskPhrase.OUTCOME.of(line)));
        }
        sourceOptions.rehearse(plan);
        sourceOptions.doneBefore(Adjuster.done(earlier));
        GeneratorSession generator = new GeneratorSession(
                generatorOptions,
                OptionalDouble.of(GeneratorSetting.START_EMF_VOLTS),
                reach -> meet(reach, plan, progress));
        PlanGuide guide = new PlanGuide(plan, answers, progress, generator::feed).noting(facts.notes());
        int code = generator.run(
                new SessionParts(
                        address.text(),
                        () -> WayIn.of(address).open(address, sourceOptions),
                        source -> outputOptions.openLive(page, KeyAction.PREVIOUS, KeyAction.COUNTER),
                        AnalysisSettings.following(PeakSettings.defaults()),
                        guide),
                spec.commandLine().getErr());
        String outcome = guide.outcome(outputOptions.logFile());
        spec.commandLine().getErr().println(AskPhrase.OUTCOME.of(outcome));
        outputOptions.voice().say(outcome);
        outputOptions.voice().finish();
        if (!progress.isOver()) {
            return code == 0 ? UNFINISHED_CODE : code;
        }
        ShownPlan.curves(plan).forEach(spec.commandLine().getErr()::println);
        return code;
    }

    /** Where a log is kept and a dialogue is under way the set is asked for; nothing of a person is written down unasked. */
    private Facts facts(Optional<SafetyQuestions> dialogue) throws BridgeException {
        Facts told = Facts.ofNotes(notes);
        if (dialogue.isEmpty() || outputOptions.logFile().isEmpty() || !resume.isEmpty()) {
            return told;
        }
        Facts known = Facts.besideLog(outputOptions.logFile().get()).with(told);
        List<ReportFact> unknown = Stream.of(ReportFact.MAKER, ReportFact.MODEL, ReportFact.SERIAL)
                .filter(fact -> known.text(fact).isEmpty())
                .toList();
        return told.with(new Facts(dialogue.get().facts(unknown)));
    }

    private static void meet(GeneratorReach reach, Plan plan, AlignmentProgress progress) throws BridgeException {
        progress.withGenerator(reach);
        GeneratorMet.refuseBeyond(reach, plan.plannedHz());
    }

    private AlignmentProgress beginning(Plan plan) throws BridgeException {
        AlignmentProgress progress = new AlignmentProgress(plan);
        generatorOptions.refuseWrongUsage();
        if (generatorOptions.isGiven()) {
            progress.withGenerator(generatorOptions.reach());
        }
        if (!withoutRest) {
            progress.withRest();
        }
        if (!withoutHalvings) {
            progress.withHalvings();
        }
        if (law) {
            progress.withLaw();
        }
        return progress;
    }

    private Plan marked(Plan plan) throws BadInput {
        return dial.scale(generatorOptions, plan.plannedHz(), spec.commandLine().getErr())
                .map(plan::marked)
                .orElse(plan);
    }

    private Plan chosen(Plan plan) {
        if (only.isEmpty()) {
            return plan;
        }
        List<Stage> stages = plan.stages().stream()
                .filter(stage -> stage.name().equalsIgnoreCase(only.get()))
                .toList();
        if (stages.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "the plan has no stage '" + only.get() + "'; it has "
                            + String.join(
                                    ", ",
                                    plan.stages().stream().map(Stage::name).toList()));
        }
        return plan.withStages(stages);
    }

    private Plan limited(Plan plan) {
        if (roundLimitDb.isEmpty()) {
            return plan;
        }
        double limit = roundLimitDb.get();
        if (!(limit > 0 && limit <= WIDEST_LIMIT_DB)) {
            throw new ParameterException(
                    spec.commandLine(), "--round-limit takes more than 0 and at most 3 dB, not " + limit);
        }
        return plan.withStages(
                plan.stages().stream().map(stage -> stage.repeatedUntil(limit)).toList());
    }

    private List<SessionRecord> logged(Plan plan) throws BadLog {
        List<SessionRecord> records = new ArrayList<>();
        for (Path log : resume) {
            try (LogReader reader = LogReader.open(log, (line, problem) -> {})) {
                for (Optional<LogEntry> next = reader.next(); next.isPresent(); next = reader.next()) {
                    SessionRecord record = next.get().record();
                    refuseAnotherPlan(log, record, plan);
                    if (!(record instanceof ReadingTaken)) {
                        records.add(record); // of the readings a long log has too many, and they move nothing on
                    }
                }
            }
        }
        return records;
    }

    private static void refuseAnotherPlan(Path log, SessionRecord record, Plan plan) throws BadLog {
        if (record instanceof Work.PlanBegun begun && !begun.name().equals(plan.name())) {
            throw new BadLog(log + " is a log of " + begun.name() + ", not of " + plan.name()
                    + ": give the log of this set, or begin anew without --resume");
        }
    }
}
