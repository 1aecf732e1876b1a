package org.slugpeak.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.program.StateFolder;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.sessions.FoundSession;
import org.slugpeak.cli.sessions.IndexRefresh;
import org.slugpeak.cli.sessions.KeepingPlace;
import org.slugpeak.cli.sessions.SessionExport;
import org.slugpeak.cli.sessions.SessionIndex;
import org.slugpeak.cli.sessions.SessionQuery;
import org.slugpeak.cli.sessions.SessionTable;
import org.slugpeak.cli.words.SessionsPhrase;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slugpeak sessions}: lists, finds and opens what was kept. */
@Command(name = "sessions", mixinStandardHelpOptions = true)
public final class SessionsCommand implements Callable<Integer> {

    /** So many fit on a screen that can be scrolled back; who wants more narrows it, or exports. */
    private static final int MOST_LISTED = 200;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "TEXT", descriptionKey = "TEXT")
    private List<String> words = List.of();

    @Option(names = "--set", paramLabel = "NAME")
    private Optional<String> set = Optional.empty();

    @Option(names = "--serial", paramLabel = "NUMBER")
    private Optional<String> serial = Optional.empty();

    @Option(names = "--adjuster", paramLabel = "NAME")
    private Optional<String> adjuster = Optional.empty();

    @Option(names = "--since", paramLabel = "DATE")
    private Optional<LocalDate> since = Optional.empty();

    @Option(names = "--until", paramLabel = "DATE")
    private Optional<LocalDate> until = Optional.empty();

    @Option(names = "--folder", paramLabel = "DIR")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--open")
    private boolean open;

    @Option(names = "--export", paramLabel = "FILE.zip")
    private Optional<Path> export = Optional.empty();

    private final Path state;

    /** With the settings of this user. */
    public SessionsCommand() {
        this(StateFolder.path());
    }

    SessionsCommand(Path state) {
        this.state = state;
    }

    @Override
    public Integer call() throws BridgeException {
        if (open && export.isPresent()) {
            throw new ParameterException(spec.commandLine(), "choose one of --open and --export");
        }
        KeepingPlace kept = KeepingPlace.read(state);
        Path logs = logs(kept);
        String bench = kept.benchName(System.getenv());
        List<FoundSession> found;
        try (SessionIndex index = SessionIndex.open(
                kept.place(state, logs), bench, logs.toString(), () -> err().println(SessionsPhrase.WAITS.of()))) {
            new IndexRefresh(logs, index).run(count -> err().println(SessionsPhrase.READS.of(count, logs)));
            found = index.find(query());
        }
        if (export.isPresent()) {
            return export(found, new SessionExport(bench, logs), export.get());
        }
        return open ? open(found, bench, logs) : list(found);
    }

    private Path logs(KeepingPlace kept) throws BridgeException {
        Path named = folder.or(kept::folder)
                .orElseThrow(() -> new BadConfiguration("where the logs are kept is not known: name the folder with"
                        + " --folder, or write  sessions = \"FOLDER\"  into " + state.resolve(KeepingPlace.FILE)));
        try {
            return named.toRealPath();
        } catch (IOException e) {
            throw new BadInput("there is no folder " + named + ": name the one where the logs are with --folder", e);
        }
    }

    private SessionQuery query() {
        return new SessionQuery(
                words,
                set,
                serial,
                adjuster,
                since.map(SessionsCommand::beginning),
                until.map(day -> beginning(day.plusDays(1))));
    }

    private static Instant beginning(LocalDate day) {
        return day.atStartOfDay(ZoneId.systemDefault()).toInstant();
    }

    private int list(List<FoundSession> found) {
        PrintWriter out = spec.commandLine().getOut();
        if (!found.isEmpty()) {
            out.println(SessionTable.of(found.subList(0, Math.min(found.size(), MOST_LISTED)), ZoneId.systemDefault()));
        }
        out.flush();
        err().println(
                        found.isEmpty()
                                ? SessionsPhrase.NONE.of()
                                : found.size() > MOST_LISTED
                                        ? SessionsPhrase.MORE.of(found.size(), MOST_LISTED)
                                        : SessionsPhrase.FOUND.of(found.size()));
        return 0;
    }

    /** The report of the one that was found. */
    private int open(List<FoundSession> found, String bench, Path logs) throws BadInput {
        if (found.size() != 1) {
            throw new BadInput(found.isEmpty() ? SessionsPhrase.NONE.of() : SessionsPhrase.ONE.of(found.size()));
        }
        FoundSession it = found.get(0);
        if (!it.bench().equals(bench) || !it.folder().equals(logs.toString())) {
            throw new BadInput("that log is kept by " + it.bench() + " as " + it.file() + ": make its report there");
        }
        CommandLine report = new CommandLine(new ReportCommand());
        report.setOut(spec.commandLine().getOut());
        report.setErr(err());
        report.setExecutionExceptionHandler(spec.commandLine().getExecutionExceptionHandler());
        return report.execute(logs.resolve(it.file()).toString());
    }

    /** What tells of persons is said before anything is written. */
    private int export(List<FoundSession> found, SessionExport writer, Path file) throws BadInput {
        String persons = found.stream()
                .flatMap(each -> each.session().facts().personal().stream())
                .distinct()
                .collect(Collectors.joining(", "));
        err().println(persons.isEmpty() ? SessionsPhrase.NO_PERSONS.of() : SessionsPhrase.PERSONS.of(persons));
        err().flush();
        Interruption.takeCare();
        writer.write(found, file);
        err().println(SessionsPhrase.WROTE.of(file, found.size()));
        return 0;
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
