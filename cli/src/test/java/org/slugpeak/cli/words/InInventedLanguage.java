package org.slugpeak.cli.words;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The test runs as for a user whose system speaks the language of {@code art.properties}. */
public final class InInventedLanguage implements BeforeEachCallback, AfterEachCallback {

    private final Locale before = Locale.getDefault(Locale.Category.DISPLAY);

    @Override
    public void beforeEach(ExtensionContext context) {
        Locale.setDefault(Locale.Category.DISPLAY, new Locale("art", "ZZ"));
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }
}
