package org.slugpeak.cli.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.text.SafeText;
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

    /**
     * Reads the shop's own file where it lies beside a log.
     *
     * @param log need not be there
     * @return nothing where there is no {@code shop.toml}
     * @throws BadConfiguration where it cannot be read, or says something else
     */
    public static Facts besideLog(Path log) throws BadConfiguration {
        Path beside = log.resolveSibling("shop.toml");
        return Files.exists(beside) ? read(beside) : none();
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
            given.put(
                    fact(note)
                            .orElseThrow(() ->
                                    new BadConfiguration("--note takes KEY=VALUE, not '" + note + "'; the keys are "
                                            + Stream.of(ReportFact.values())
                                                    .map(ReportFact::key)
                                                    .collect(Collectors.joining(", ")))),
                    value(note));
        }
        return new Facts(given);
    }

    /**
     * Reads a note of a log, where that is a fact.
     *
     * @param note as it was noted
     * @return nothing where it is another note
     */
    public static Facts ofNote(String note) {
        return fact(note)
                .map(fact -> new Facts(Map.of(fact, SafeText.line(value(note)))))
                .orElseGet(Facts::none);
    }

    /** Of {@code KEY=VALUE}; empty where it is no such pair, or the key is unknown. */
    private static Optional<ReportFact> fact(String note) {
        int at = note.indexOf('=');
        return at < 0 ? Optional.empty() : ReportFact.ofKey(note.substring(0, at));
    }

    private static String value(String note) {
        return note.substring(note.indexOf('=') + 1);
    }

    /**
     * These as notes of a log, which {@link #ofNote} reads back.
     *
     * @return each {@code KEY=VALUE}
     */
    public List<String> notes() {
        return given.entrySet().stream()
                .map(each -> each.getKey().key() + "=" + each.getValue())
                .toList();
    }

    /**
     * One of them.
     *
     * @param fact which
     * @return empty where it was not given
     */
    public Optional<String> text(ReportFact fact) {
        return Optional.ofNullable(given.get(fact));
    }

    /**
     * These beside those of another session; where the two say otherwise, both.
     *
     * @param other of another session
     * @return both
     */
    public Facts beside(Facts other) {
        Map<ReportFact, String> both = new EnumMap<>(ReportFact.class);
        both.putAll(given);
        other.given.forEach((fact, text) ->
                both.merge(fact, text, (one, another) -> one.equals(another) ? one : one + " / " + another));
        return new Facts(both);
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
