package org.slugpeak.cli;

import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Objects;
import org.slf4j.LoggerFactory;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.option.OutputOptions;
import org.slugpeak.cli.program.StateFolder;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.run.VoiceOutput;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns failures into one line on standard error and an exit code; the details go to the log file. */
final class Failures {

    private Failures() {}

    /** Wrong usage: exit code 2. */
    static int usage(ParameterException failure, String[] args) {
        CommandLine command = failure.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        tell(command, List.of(args), name + ": " + words(failure) + suggestion(failure));
        return 2;
    }

    /** Could not be done: exit code 1. A value that the command itself refuses is wrong usage all the same. */
    static int execution(Exception failure, CommandLine command, ParseResult parsed) {
        String name = command.getCommandSpec().qualifiedName();
        if (Interruption.isRequested()) {
            return Interruption.EXIT_CODE;
        }
        if (failure instanceof TypeConversionException) {
            tell(command, parsed.originalArgs(), name + ": " + message(failure) + "; see " + name + " --help");
            return 2;
        }
        if (failure instanceof InvalidPathException noName) {
            tell(
                    command,
                    parsed.originalArgs(),
                    name + ": '" + SafeText.line(noName.getInput()) + "' can be no file name on this system ("
                            + oneLine(noName.getReason()) + "): choose another");
            return 2;
        }
        tell(command, parsed.originalArgs(), name + ": " + what(failure));
        LoggerFactory.getLogger(Failures.class).error("{} failed", name, failure);
        return 1;
    }

    private static String what(Exception failure) {
        return failure instanceof BridgeException
                ? message(failure)
                : "a fault in slugpeak itself (" + oneLine(failure.toString()) + "); please report it with the file "
                        + StateFolder.logFile();
    }

    /** Whoever asked for a voice hears it, too; where there is none the line on the screen is all. */
    private static void tell(CommandLine command, List<String> args, String line) {
        command.getErr().println(line);
        if (args.contains(OutputOptions.SPEAK)) {
            VoiceOutput.sayAlone(line);
        }
    }

    /**
     * The machine gave out: exit code 1. It tells so by an error of any kind; a plain one where the time zones can no longer be
     * read. Nothing is logged, since that might need what there is none of.
     */
    static int ofTheMachine(Error failure) {
        System.err.println("slugpeak: the machine gives no more for this (" + oneLine(failure.toString())
                + "): is the input what you meant to give, is there memory, may enough files be open (ulimit -n)?");
        return 1;
    }

    /** A thread beside the session's has failed: one line, and the session goes on. */
    static void inAThread(Thread thread, Throwable failure) {
        System.err.println("slugpeak: a fault in slugpeak itself (" + thread.getName() + ": "
                + oneLine(failure.toString()) + "); please report it with the file " + StateFolder.logFile());
        LoggerFactory.getLogger(Failures.class).error("{} failed", thread.getName(), failure);
    }

    private static String words(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched) {
            return "'" + String.join("', '", unmatched.getUnmatched()) + "' is not known here";
        }
        return message(failure)
                .replaceAll("'([^']*)' is not an? (double|float)", "'$1' is no number")
                .replaceAll("'([^']*)' is not an? (int|long)", "'$1' is no whole number")
                .replaceAll(
                        "cannot convert '([^']*)' to interface java\\.nio\\.file\\.Path \\(java\\.nio\\.file\\.InvalidPathException: (.*)\\)",
                        "'$1' can be no file name on this system ($2)");
    }

    private static String suggestion(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched) {
            List<String> similar = unmatched.getSuggestions();
            if (!similar.isEmpty()) {
                return "; did you mean " + String.join(" or ", similar) + "?";
            }
        }
        String name = failure.getCommandLine().getCommandSpec().qualifiedName();
        return "; see " + name + " --help";
    }

    private static String message(Exception failure) {
        return oneLine(Objects.requireNonNullElse(failure.getMessage(), failure.toString()));
    }

    private static String oneLine(String text) {
        return SafeText.line(text.strip().replaceAll("\\s*\\R\\s*", "; "));
    }
}
