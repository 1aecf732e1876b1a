package org.slugpeak.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.cli.report.CsvExport;
import org.slugpeak.cli.report.HtmlReport;
import org.slugpeak.cli.report.MarkdownReport;
import org.slugpeak.cli.report.SessionStory;
import org.slugpeak.cli.report.StoryTeller;
import org.slugpeak.core.session.SessionRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slugpeak report}: what was done, to keep and to print. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        header = ReportCommand.HEADER,
        description = {
            "Before and after of each adjuster in dB, the readings, response curves, dial errors, warnings,",
            "safety answers and the instrument. The page needs no network and prints on A4 and Letter."
        },
        footer = {
            "",
            "Examples:",
            "  slugpeak report tuesday.jsonl                 writes tuesday.html",
            "  slugpeak report before.jsonl after.jsonl --out set.html",
            "  slugpeak report tuesday.jsonl --csv > readings.csv"
        })
final class ReportCommand implements Callable<Integer> {

    /** What it does, in a line of the list of commands. */
    static final String HEADER = "Make a report of session logs: one page to keep, print and hand over with the set.";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "1..*", paramLabel = "SESSION", description = "Session logs (.jsonl), in the order to report.")
    private List<Path> sessions = List.of();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to FILE (default: the first log's name with .html). A file that is there is replaced"
                    + " unless it is a session log.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--csv", description = "The readings as CSV on standard output, or in --out FILE.")
    private boolean csv;

    @Option(names = "--markdown", description = "The tables as Markdown on standard output, or in --out FILE.")
    private boolean markdown;

    @Override
    public Integer call() throws BadLog, BadInput {
        if (csv && markdown) {
            throw new ParameterException(spec.commandLine(), "choose one of --csv and --markdown");
        }
        List<SessionStory> stories = new ArrayList<>();
        for (Path session : sessions) {
            stories.add(read(session));
        }
        if (csv || markdown) {
            String text = csv ? CsvExport.of(stories) : MarkdownReport.of(stories);
            if (out.isPresent()) {
                write(out.get(), text);
            } else {
                print(text);
            }
        } else {
            write(out.orElseGet(this::pageBesideTheLog), HtmlReport.of(stories));
        }
        return 0;
    }

    private SessionStory read(Path session) throws BadLog {
        try (LogReader reader = LogReader.open(session, (line, problem) -> complain(session, line, problem))) {
            Path name = session.getFileName();
            StoryTeller teller = new StoryTeller(name == null ? session.toString() : name.toString(), reader.start());
            for (Optional<SessionRecord> next = reader.next(); next.isPresent(); next = reader.next()) {
                next.ifPresent(teller::take);
            }
            return teller.story(reader.ending().message());
        }
    }

    private void complain(Path session, long line, String problem) {
        spec.commandLine()
                .getErr()
                .println("slugpeak report: " + session + ", line " + line + " was passed over: it " + problem);
    }

    private Path pageBesideTheLog() {
        Path first = sessions.get(0);
        String name = String.valueOf(first.getFileName());
        String stem = name.endsWith(".jsonl") ? name.substring(0, name.length() - ".jsonl".length()) : name;
        return first.resolveSibling(stem + ".html");
    }

    private void write(Path file, String text) throws BadInput {
        if (file.toString().endsWith(".jsonl")) {
            throw new ParameterException(
                    spec.commandLine(), file + " would replace a session log: choose another name");
        }
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new BadInput("cannot write " + file + ": check the folder and its permissions, or choose --out", e);
        }
        PrintWriter console = spec.commandLine().getErr();
        console.println("slugpeak report: wrote " + file);
    }

    private void print(String text) {
        PrintWriter console = spec.commandLine().getOut();
        console.print(text);
        console.flush();
    }
}
