package org.slugpeak.cli.words;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
}
