package org.slugpeak.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.slugpeak.cli.command.AlignCommand;
import org.slugpeak.cli.command.CheckCommand;
import org.slugpeak.cli.command.CurveCommand;
import org.slugpeak.cli.command.DemoCommand;
import org.slugpeak.cli.command.DoctorCommand;
import org.slugpeak.cli.command.PortsCommand;
import org.slugpeak.cli.command.ReplayCommand;
import org.slugpeak.cli.command.ReportCommand;
import org.slugpeak.cli.command.ScaleCommand;
import org.slugpeak.cli.command.SessionsCommand;
import org.slugpeak.cli.command.SheetCommand;
import org.slugpeak.cli.command.SuperhetCommand;
import org.slugpeak.cli.command.WatchCommand;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A command in the list of commands. Its options are looked up only when it was asked for: to read the annotations of all
 * commands takes longer than everything else at the start.
 *
 * @param word what the user types
 * @param command makes the object whose annotations picocli reads
 */
record CommandEntry(String word, Supplier<Object> command) {

    /** All of them, in the order of the help. */
    private static final List<CommandEntry> ALL = List.of(
            new CommandEntry("demo", DemoCommand::new),
            new CommandEntry("watch", WatchCommand::new),
            new CommandEntry("replay", ReplayCommand::new),
            new CommandEntry("align", AlignCommand::new),
            new CommandEntry("curve", CurveCommand::new),
            new CommandEntry("sheet", SheetCommand::new),
            new CommandEntry("report", ReportCommand::new),
            new CommandEntry("sessions", SessionsCommand::new),
            new CommandEntry("scale", ScaleCommand::new),
            new CommandEntry("superhet", SuperhetCommand::new),
            new CommandEntry("ports", PortsCommand::new),
            new CommandEntry("check", CheckCommand::new),
            new CommandEntry("doctor", DoctorCommand::new));

    /** Adds all commands to the root: the one asked for with its options, the others for the help only. */
    static void addAll(CommandLine root, String... args) {
        Optional<String> wanted =
                Arrays.stream(args).filter(arg -> !arg.startsWith("-")).findFirst();
        for (CommandEntry entry : ALL) {
            boolean isWanted = wanted.isPresent() && wanted.get().equals(entry.word);
            root.addSubcommand(entry.word, isWanted ? new CommandLine(entry.command.get()) : entry.forTheHelp());
        }
    }

    /** Adds all commands to the root, each with its options. */
    static void addAllInFull(CommandLine root) {
        ALL.forEach(entry -> root.addSubcommand(entry.word, new CommandLine(entry.command.get())));
    }

    private CommandLine forTheHelp() {
        return new CommandLine(CommandSpec.create().name(word));
    }
}
