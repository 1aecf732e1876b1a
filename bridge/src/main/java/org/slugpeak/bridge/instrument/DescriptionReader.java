package org.slugpeak.bridge.instrument;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.Suggestion;
import org.slugpeak.bridge.toml.TomlFile;

/** Reads one description and finds every mistake in it. Immutable; any thread may use it. */
final class DescriptionReader {

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]*");

    private final Map<String, DecoderProvider> providers;

    DescriptionReader(Map<String, DecoderProvider> providers) {
        this.providers = providers;
    }

    InstrumentDescription read(String file, String text) throws BadConfiguration {
        return TomlFile.read(file, "description", text, this::description);
    }

    private InstrumentDescription description(Section top) {
        String name = top.requiredText("name");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            top.problem("name", "'name' must be lower-case letters, digits and hyphens, not '" + name + "'");
        }
        String title = top.text("title").orElse(name);
        LinkSettings link;
        try (Section section = top.tableOrEmpty("link")) {
            link = LinkTable.read(section);
        }
        LinkBounds bounds;
        try (Section section = top.tableOrEmpty("bounds")) {
            bounds = bounds(section);
        }
        String hint = top.text("hint").orElse("");
        String language = language(top);
        return new InstrumentDescription(name, title, hint, language, link, decoders(top, language), bounds);
    }

    private String language(Section top) {
        String written = top.requiredText("speaks");
        if (!written.isEmpty() && !providers.containsKey(written)) {
            top.problem(
                    "speaks",
                    "'" + written + "' is no language of instruments"
                            + Suggestion.didYouMean(written, providers.keySet()));
        }
        return written;
    }

    private DecoderFactory decoders(Section top, String language) {
        DecoderProvider provider = providers.get(language);
        if (provider == null) {
            providers.keySet().forEach(top::has); // so that its table is not called unknown as well
            return setting -> {
                throw new BadConfiguration("'" + language + "' is no language of instruments");
            };
        }
        try (Section section = top.tableOrEmpty(language)) {
            return provider.read(section);
        }
    }

    private static LinkBounds bounds(Section section) {
        return new LinkBounds(
                positive(section, "effective-bits", 1),
                positive(section, "noise", 1),
                positive(section, "readings-per-second", 1),
                positive(section, "jitter-ms", 1e-3),
                positive(section, "hum-rejection-db", 1));
    }

    private static OptionalDouble positive(Section section, String key, double unit) {
        OptionalDouble number = section.positive(key);
        return number.isPresent() ? OptionalDouble.of(number.getAsDouble() * unit) : number;
    }
}
