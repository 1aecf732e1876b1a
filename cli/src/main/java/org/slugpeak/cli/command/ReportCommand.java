package org.slugpeak.cli.command;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.report.CsvExport;
import org.slugpeak.cli.report.EndingText;
import org.slugpeak.cli.report.HtmlReport;
import org.slugpeak.cli.report.LogComplaints;
import org.slugpeak.cli.report.MarkdownReport;
import org.slugpeak.cli.report.ReportFile;
import org.slugpeak.cli.report.SessionStory;
import org.slugpeak.cli.report.StoryTeller;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.words.ReportPhrase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slugpeak report}: what was done, to keep and to print. */
@Command(name = "report", mixinStandardHelpOptions = true)
public final class ReportCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "1..*", paramLabel = "SESSION", descriptionKey = "SESSION")
    private List<Path> sessions = List.of();

    @Option(names = "--out", paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--csv")
    private boolean csv;

    @Option(names = "--markdown")
    private boolean markdown;

    @Override
    public Integer call() throws BridgeException {
        if (csv && markdown) {
            throw new ParameterException(spec.commandLine(), "choose one of --csv and --markdown");
        }
        Optional<Path> file = csv || markdown ? out : Optional.of(out.orElseGet(this::pageBesideTheLog));
        if (file.isPresent()) {
            Interruption.takeCare();
            replace(file.get());
        } else {
            PrintWriter console = spec.commandLine().getOut();
            write(console);
            console.flush();
        }
        return 0;
    }

    private void replace(Path file) throws BridgeException {
        ReportFile.refuseUnlessReplaceable(file);
        try (Draft draft = Draft.of(file)) {
            Writer text = new OutputStreamWriter(draft.out(), StandardCharsets.UTF_8);
            write(text);
            text.flush();
            draft.replace();
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(
                    "cannot write " + file + " (" + e.getMessage() + "): check folder, permissions and room, or choose"
                            + " --out; what was there is as it was",
                    e);
        }
        spec.commandLine().getErr().println(ReportPhrase.WROTE.of(file));
    }

    private void write(Writer text) throws BridgeException {
        try {
            if (csv) {
                CsvExport export = new CsvExport(text);
                for (Path session : sessions) {
                    export(session, export);
                }
                export.end();
            } else {
                List<SessionStory> stories = new ArrayList<>();
                for (Path session : sessions) {
                    stories.add(story(session));
                }
                text.write(markdown ? MarkdownReport.of(stories) : HtmlReport.of(stories));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void export(Path session, CsvExport export) throws BadLog {
        LogComplaints complaints = complaints(session);
        try (LogReader reader = LogReader.open(session, complaints)) {
            export.session(nameOf(session), reader.start());
            reader.drainTo(entry -> export.take(entry.record()));
        }
        complaints.summarise();
    }

    private SessionStory story(Path session) throws BadLog {
        LogComplaints complaints = complaints(session);
        try (LogReader reader = LogReader.open(session, complaints)) {
            StoryTeller teller = new StoryTeller(nameOf(session), reader.start());
            reader.drainTo(teller::take);
            complaints.summarise();
            return teller.story(EndingText.of(reader.ending()));
        }
    }

    private LogComplaints complaints(Path session) {
        return new LogComplaints(session, spec.commandLine().getErr());
    }

    private static String nameOf(Path session) {
        Path name = session.getFileName();
        return name == null ? session.toString() : name.toString();
    }

    private Path pageBesideTheLog() {
        Path first = sessions.get(0);
        String name = nameOf(first);
        String stem = name.endsWith(".jsonl") ? name.substring(0, name.length() - ".jsonl".length()) : name;
        return first.resolveSibling(stem + ".html");
    }
}
