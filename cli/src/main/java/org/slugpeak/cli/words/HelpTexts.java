package org.slugpeak.cli.words;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** What commands and options are for, as picocli asks for it when it prints a help. Immutable; any thread may use it. */
public final class HelpTexts extends ResourceBundle {

    private static final String PREFIX = "help.";

    private final Language language = Language.today();
    private final Set<String> keys = language.keys(PREFIX);

    /** The texts of today's language. */
    public HelpTexts() {}

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return keys.contains(key) ? language.say(PREFIX + key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys);
    }

    /**
     * Gives a command of a list its one line, and nothing else, since the list shows no more.
     *
     * @param command of the list
     */
    public void introduce(CommandSpec command) {
        String key = command.qualifiedName(".") + ".usage.";
        if (keys.contains(key + "header")) {
            command.usageMessage().header(getString(key + "header"));
        } else {
            command.usageMessage().description(getString(key + "description"));
        }
    }
}
