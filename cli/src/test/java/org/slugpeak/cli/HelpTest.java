package org.slugpeak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.words.HelpTexts;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Everything that can be typed is told of in the file of the language, and nothing else. */
class HelpTest {

    private static final HelpTexts TEXTS = new HelpTexts();

    private static List<CommandSpec> commands() {
        List<CommandSpec> all = new ArrayList<>();
        List<String> words = List.copyOf(with("demo").getSubcommands().keySet());
        assertTrue(words.size() >= 10, words.toString());
        CommandLine root = with("none");
        all.add(root.getCommandSpec());
        words.forEach(word -> gather(with(word).getSubcommands().get(word), all));
        all.forEach(each -> each.resourceBundle(TEXTS));
        return all;
    }

    private static CommandLine with(String word) {
        CommandLine root = new CommandLine(new Main());
        CommandEntry.addAll(root, word);
        return root;
    }

    private static void gather(CommandLine command, List<CommandSpec> all) {
        all.add(command.getCommandSpec());
        command.getSubcommands().values().forEach(each -> gather(each, all));
    }

    @Test
    void everyCommandAndOptionSaysWhatItIsFor() {
        List<String> silent = new ArrayList<>();
        for (CommandSpec command : commands()) {
            String name = command.qualifiedName();
            if (command.usageMessage().description().length == 0) {
                silent.add(name);
            }
            command.args().stream()
                    .filter(argument -> argument.description().length == 0)
                    .forEach(argument -> silent.add(name + " " + argument.paramLabel() + " " + argument));
        }
        assertEquals(List.of(), silent);
    }

    @Test
    void noTextIsOfACommandOrAnOptionThatIsNotThere() {
        Set<String> known = new HashSet<>(Set.of("usage.synopsisHeading", "usage.commandListHeading"));
        for (CommandSpec command : commands()) {
            String prefix = command.qualifiedName(".") + ".";
            for (String part : List.of("header", "description", "footer", "commandListHeading")) {
                known.add(prefix + "usage." + part);
            }
            command.args()
                    .forEach(argument -> names(argument).forEach(name -> known.addAll(List.of(name, prefix + name))));
        }
        Set<String> unknown = new TreeSet<>();
        TEXTS.keySet().stream().map(key -> key.replaceFirst("\\.\\d+$", "")).forEach(unknown::add);
        assertTrue(unknown.size() > 150, unknown.toString());
        unknown.removeAll(known);
        assertEquals(Set.of(), unknown);
    }

    private static List<String> names(ArgSpec argument) {
        List<String> names = new ArrayList<>();
        if (argument.descriptionKey() != null) {
            names.add(argument.descriptionKey());
        }
        if (argument instanceof OptionSpec option) {
            Arrays.stream(option.names())
                    .map(name -> name.replaceFirst("^-+", ""))
                    .forEach(names::add);
        } else if (argument instanceof PositionalParamSpec positional) {
            names.add(positional.paramLabel());
        }
        return names;
    }
}
