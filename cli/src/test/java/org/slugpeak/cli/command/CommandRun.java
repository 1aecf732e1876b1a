package org.slugpeak.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/** What a command printed and how it ended. */
record CommandRun(int exitCode, String out, String err) {

    static CommandRun of(Object command, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line =
                new CommandLine(command).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        int exitCode = line.execute(args);
        return new CommandRun(exitCode, out.toString(), err.toString());
    }
}
