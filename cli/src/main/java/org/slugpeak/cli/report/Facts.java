package org.slugpeak.cli.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;
import org.slugpeak.cli.words.ReportFact;

/**
 * What somebody wants on the first page: of the set, the job, the workshop and its instruments. Nothing is there that was not given.
 * Immutable; any thread may use it.
 *
 * @param given text of each fact, none empty
 */
public record Facts(Map<ReportFact, String> given) {

    public Facts {
        Map<ReportFact, String> kept = new EnumMap<>(ReportFact.class);
        given.forEach((fact, text) -> {
            if (!text.isBlank()) {
                kept.put(fact, text.strip());
            }
        });
        given = kept;
    }

    /**
     * Nothing is known.
     *
     * @return no facts
     */
    public static Facts none() {
        return new Facts(Map.of());
    }

    /**
     * Reads a shop's own file.
     *
     * @param file a small TOML file, a text for each fact
     * @return its facts
     * @throws BadConfiguration where it cannot be read, or says something else
     */
    public static Facts read(Path file) throws BadConfiguration {
        try {
            return TomlFile.read(String.valueOf(file.getFileName()), "shop", SmallFile.read(file), Facts::of);
        } catch (IOException e) {
            throw new BadConfiguration(
                    file + " cannot be read (" + e.getMessage() + "): name another with --shop, or leave it out", e);
        }
    }

    private static Facts of(Section top) {
        Map<ReportFact, String> given = new EnumMap<>(ReportFact.class);
        for (ReportFact fact : ReportFact.values()) {
            top.text(fact.key()).ifPresent(text -> given.put(fact, text));
        }
        return new Facts(given);
    }

    /**
     * Reads what was typed.
     *
     * @param notes each {@code KEY=VALUE}
     * @return their facts; of two with the same key the later one
     * @throws BadConfiguration where one is no such pair, or its key is unknown; the message lists the keys
     */
    public static Facts ofNotes(List<String> notes) throws BadConfiguration {
        Map<ReportFact, String> given = new EnumMap<>(ReportFact.class);
        for (String note : notes) {
            int at = note.indexOf('=');
            Optional<ReportFact> fact = at < 0 ? Optional.empty() : ReportFact.ofKey(note.substring(0, at));
            given.put(
                    fact.orElseThrow(
                            () -> new BadConfiguration("--note takes KEY=VALUE, not '" + note + "'; the keys are "
                                    + Stream.of(ReportFact.values())
                                            .map(ReportFact::key)
                                            .collect(Collectors.joining(", ")))),
                    note.substring(at + 1));
        }
        return new Facts(given);
    }

    /**
     * These, and others that count more.
     *
     * @param others what is closer to the job
     * @return both
     */
    public Facts with(Facts others) {
        Map<ReportFact, String> both = new EnumMap<>(ReportFact.class);
        both.putAll(given);
        both.putAll(others.given);
        return new Facts(both);
    }

    /**
     * What of it tells of a person.
     *
     * @return names of those facts in today's language; empty where there is none
     */
    public List<String> personal() {
        return given.keySet().stream()
                .filter(ReportFact::isPersonal)
                .map(fact -> fact.of())
                .toList();
    }
}
