package org.slugpeak.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slugpeak.cli.Main;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes the sources of the manual pages and the completion for shells, from the commands themselves. */
final class Manual {

    private Manual() {}

    /**
     * Writes them.
     *
     * @param args a folder for the manual pages, a file for the completion
     * @throws IOException if they cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path pages = Files.createDirectories(Path.of(args[0]));
        Path completion = Path.of(args[1]);
        CommandLine whole = Main.withAllCommands();
        List<CommandSpec> commands = new ArrayList<>();
        gather(whole.getCommandSpec(), commands);
        int failed = ManPageGenerator.generateManPage(
                pages.toFile(), null, new boolean[0], true, commands.toArray(CommandSpec[]::new));
        if (failed != 0) {
            throw new IOException("the manual pages cannot be written to " + pages);
        }
        Files.createDirectories(completion.toAbsolutePath().getParent());
        Files.writeString(completion, AutoComplete.bash("slugpeak", whole), StandardCharsets.UTF_8);
    }

    private static void gather(CommandSpec command, List<CommandSpec> all) {
        all.add(command);
        command.subcommands().values().forEach(each -> gather(each.getCommandSpec(), all));
    }
}
