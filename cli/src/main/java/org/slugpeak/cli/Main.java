package org.slugpeak.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.slugpeak.cli.outlet.StandardOutput;
import org.slugpeak.cli.program.Version;
import org.slugpeak.cli.run.Interruption;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where the program starts: finds the command, runs it, turns every failure into one line and an exit code. */
@Command(
        name = "slugpeak",
        mixinStandardHelpOptions = true,
        header = "Finds the peak while you align a valve radio, says it by ear, and keeps the record.",
        description = {"", "Start with: slugpeak demo", ""},
        synopsisHeading = "Usage: ",
        commandListHeading = "%nCommands:%n",
        versionProvider = Version.class,
        footer = {
            "",
            "Exit codes: 0 done; 1 it could not be done (one line says why and what to do next); 2 wrong usage;",
            "130 interrupted, with the log closed properly.",
            "A valve radio can kill. See hardware-notes/safety.md before you connect anything."
        })
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @CommandLine.Option(
            names = "--verbose",
            scope = CommandLine.ScopeType.INHERIT,
            description = "Show the log of what happens behind the scenes on standard error too.")
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
        } catch (VirtualMachineError | LinkageError failure) {
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
        commandLine.setParameterExceptionHandler(Failures::usage);
        commandLine.setExecutionExceptionHandler(Failures::execution);
        int exitCode = commandLine.execute(args);
        commandLine.getOut().flush();
        return exitCode;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given; try slugpeak demo");
    }
}
