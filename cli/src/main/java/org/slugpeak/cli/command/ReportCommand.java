package org.slugpeak.cli.command;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.report.Comparison;
import org.slugpeak.cli.report.ComparisonCsv;
import org.slugpeak.cli.report.Cover;
import org.slugpeak.cli.report.CsvExport;
import org.slugpeak.cli.report.EndingText;
import org.slugpeak.cli.report.Facts;
import org.slugpeak.cli.report.HtmlReport;
import org.slugpeak.cli.report.LogComplaints;
import org.slugpeak.cli.report.MarkdownReport;
import org.slugpeak.cli.report.PdfPrinter;
import org.slugpeak.cli.report.ReportFile;
import org.slugpeak.cli.report.SessionStory;
import org.slugpeak.cli.report.StoryTeller;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.words.ReportPhrase;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

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

    @Option(names = "--pdf")
    private boolean pdf;

    @Option(names = "--paper", paramLabel = "any|a4|letter", converter = PaperConverter.class)
    private Cover.Paper paper = Cover.Paper.ANY;

    @Option(names = "--large-print")
    private boolean large;

    @Option(names = "--compare")
    private boolean compare;

    @Option(names = "--note", paramLabel = "KEY=VALUE")
    private List<String> notes = List.of();

    @Option(names = "--shop", paramLabel = "FILE")
    private Optional<Path> shop = Optional.empty();

    private Cover cover = new Cover(Facts.none(), ZoneOffset.UTC, Cover.Paper.ANY, false, false);

    @Override
    public Integer call() throws BridgeException {
        if (csv && markdown) {
            throw new ParameterException(spec.commandLine(), "choose one of --csv and --markdown");
        }
        if (pdf && (csv || markdown)) {
            throw new ParameterException(spec.commandLine(), "--pdf prints the page: leave out --csv and --markdown");
        }
        if (compare && sessions.size() != 2) {
            throw new ParameterException(spec.commandLine(), "--compare takes two logs, the older one first");
        }
        cover = new Cover(facts(), ZoneId.systemDefault(), paper, large, compare);
        Optional<Path> file = csv || markdown ? out : Optional.of(out.orElseGet(this::pageBesideTheLog));
        if (file.isPresent()) {
            Interruption.takeCare();
            if (pdf) {
                ReportFile.refuseUnlessReplaceable(printed(file.get()));
            }
            replace(file.get());
            if (pdf) {
                print(file.get());
            }
        } else {
            PrintWriter console = spec.commandLine().getOut();
            write(console);
            console.flush();
        }
        return 0;
    }

    /** The shop's file lies beside the log where none is named; what is typed counts more. */
    private Facts facts() throws BridgeException {
        Facts ofShop = shop.isPresent() ? Facts.read(shop.get()) : Facts.besideLog(sessions.get(0));
        return ofShop.with(Facts.ofNotes(notes));
    }

    private void print(Path page) throws BridgeException {
        Path printed = printed(page);
        PdfPrinter.find(System.getenv())
                .orElseThrow(() -> new BadInput("no PDF, since no Chromium was found: open " + page
                        + " in any browser and print it to a file, or install Chromium"))
                .print(page, printed);
        spec.commandLine().getErr().println(ReportPhrase.WROTE.of(printed));
    }

    private static Path printed(Path page) {
        return page.resolveSibling(stem(page, ".html") + ".pdf");
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

    /** Before it is written. */
    private void tellOfPersons() {
        if (!cover.facts().personal().isEmpty()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(ReportPhrase.NAMES_PERSONS.of(
                    String.join(", ", cover.facts().personal())));
            err.flush();
        }
    }

    private void write(Writer text) throws BridgeException {
        try {
            if (csv && !compare) {
                CsvExport export = new CsvExport(text);
                for (Path session : sessions) {
                    export(session, export);
                }
                export.end();
            } else {
                text.write(told());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String told() throws BadLog {
        List<SessionStory> stories = new ArrayList<>();
        for (Path session : sessions) {
            stories.add(story(session));
        }
        if (csv) {
            return ComparisonCsv.of(Comparison.of(stories.get(0), stories.get(1)));
        }
        cover = cover.with(stories);
        tellOfPersons();
        return markdown ? MarkdownReport.of(stories, cover) : HtmlReport.of(stories, cover);
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
        return first.resolveSibling(stem(first, ".jsonl") + ".html");
    }

    /** Reads the word after {@code --paper}. */
    static final class PaperConverter implements ITypeConverter<Cover.Paper> {
        @Override
        public Cover.Paper convert(String word) {
            return Stream.of(Cover.Paper.values())
                    .filter(each -> each.name().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(
                            () -> new TypeConversionException("--paper takes any, a4 or letter, not '" + word + "'"));
        }
    }

    private static String stem(Path file, String extension) {
        String name = nameOf(file);
        return name.endsWith(extension) ? name.substring(0, name.length() - extension.length()) : name;
    }
}
