package org.slugpeak.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.slugpeak.cli.outlet.StandardOutput;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.words.HelpTexts;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where the program starts: finds the command, runs it, turns every failure into one line and an exit code. */
@Command(name = "slugpeak", mixinStandardHelpOptions = true, versionProvider = Version.class)
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @CommandLine.Option(names = "--verbose", scope = CommandLine.ScopeType.INHERIT)
    void verbose(boolean on) {
        if (on) {
            System.setProperty("slugpeak.verbose", "true");
        }
    }

    /**
     * Runs a command and leaves with its exit code.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        int exitCode;
        try {
            StandardOutput.takeOver();
            Interruption.takeOver();
            Thread.setDefaultUncaughtExceptionHandler(Failures::inAThread);
            exitCode = run(args);
        } catch (Error failure) {
            exitCode = Failures.ofTheMachine(failure);
        }
        Interruption.finished();
        System.exit(exitCode == 0 && StandardOutput.isBroken() ? 1 : exitCode);
    }

    /**
     * Runs a command.
     *
     * @param args the command line
     * @return the exit code
     */
    static int run(String... args) {
        CommandLine commandLine = new CommandLine(new Main());
        CommandEntry.addAll(commandLine, args);
        commandLine.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        commandLine.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        commandLine.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        commandLine.setUsageHelpAutoWidth(false);
        commandLine.setUsageHelpWidth(100);
        commandLine.setHelpFactory(Main::help);
        commandLine.setParameterExceptionHandler(Failures::usage);
        commandLine.setExecutionExceptionHandler(Failures::execution);
        int exitCode = commandLine.execute(args);
        commandLine.getOut().flush();
        return exitCode;
    }

    /**
     * Every command with its options and help texts, for what the build makes of them; far too slow for a start.
     *
     * @return the root
     */
    public static CommandLine withAllCommands() {
        CommandLine root = new CommandLine(new Main());
        CommandEntry.addAllInFull(root);
        root.setResourceBundle(new HelpTexts());
        return root;
    }

    /** What options are for is looked up only where a help is printed. */
    private static CommandLine.Help help(CommandSpec command, CommandLine.Help.ColorScheme colours) {
        HelpTexts texts = new HelpTexts();
        command.resourceBundle(texts);
        for (CommandLine each : command.subcommands().values()) {
            texts.introduce(each.getCommandSpec());
        }
        return new CommandLine.Help(command, colours);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given; try slugpeak demo");
    }
}
