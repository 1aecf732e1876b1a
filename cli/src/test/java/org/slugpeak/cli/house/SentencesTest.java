package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads or hears stands in the file of the language, and in no class. */
class SentencesTest {

    /** One-line errors that are printed, not thrown, and what stands within an error text. */
    private static final Set<String> ERRORS = Set.of("Failures", "StandardOutput", "OptionScope");

    /** Markup, which nobody reads. */
    private static final Set<String> MARKUP = Set.of("Svg", "HtmlReport", "MarkdownReport");

    private static final Set<String> IN_CLI = Set.of(
            // The reason of an end, a source and what it measures: words of the log's format.
            "PlanGuide: plan through",
            "CurveGuide: curve complete",
            "CurveGuide: the generator does not follow",
            "SessionRun: source ended",
            "Interruption: terminal closed",
            "DialLog: receiver dial",
            "DialLog: dial error",
            // Kinds of entries, as the log spells them but for the hyphens.
            "ReportTables: wrong way",
            "ReportTables: cut generator",
            "ReportTables: generator changed",
            "ReportTables: negative going",
            "ReportTables: set up",
            // Classes of the style sheet.
            "GainChart: mark middle",
            "GainChart: label end",
            "GainChart: bar loss",
            "CurveChart: curve first",
            "CurveChart: curve second",
            "CurveChart: curve third",
            "CurveChart: mark end",
            "CurveChart: mark middle",
            "LevelChart: mark end",
            "LevelChart: mark middle",
            "LevelChart: band odd",
            // An error of the way out, with nobody left to take it.
            "Interruption: slugpeak: the source did not let go in time; a log has no end record",
            // A command's name before a warning.
            "DialLog: slugpeak scale: ");

    private static final Set<String> IN_CORE = Set.of(
            // Quantities, as the log spells them.
            "LevelKind: tone level",
            "LevelKind: rms level",
            "LevelKind: band level",
            "Measurand: dc voltage",
            "Measurand: ac voltage",
            // Error texts of callers' bugs, put together before they are thrown.
            "MeterSettings:  must be ",
            "MeterSettings:  ms to 1 s, not ",
            "ResponsePoint: a point needs a positive frequency and a level",
            "KnownPoint: a known point needs positive frequencies",
            "PlannedScene: ' of stage '",
            // What plans call the points where a meter is clipped, to be recognised and not to be said.
            "Terminals: \\bavc\\b|\\bagc\\b|gain control|s-meter|tuning eye",
            "Terminals: electrolytic|ratio detector|half",
            "Terminals: voice coil|speaker|headphone|dummy load|output|\\bac\\b",
            // Names of the parts of the invented set.
            "Part: C1 aerial trimmer",
            "Part: C2 oscillator trimmer",
            "Part: C5 short-wave oscillator trimmer");

    private static Set<String> sentences(String module) {
        List<Path> files = Sources.of(module).stream()
                .filter(file -> !file.getParent().endsWith("cli/words"))
                .toList();
        Set<String> found = new TreeSet<>(LooseSentences.in(SourceTrees.of(files)));
        found.removeIf(each -> isOf(each, ERRORS) || isOf(each, MARKUP));
        return found;
    }

    private static boolean isOf(String found, Set<String> classes) {
        return classes.contains(found.substring(0, found.indexOf(':')));
    }

    @Test
    void noClassOfTheCliHoldsASentenceButThoseOfTheRoomOfWords() {
        assertEquals(new TreeSet<>(IN_CLI), sentences("cli"));
    }

    @Test
    void noClassOfTheCoreHoldsASentence() {
        assertEquals(new TreeSet<>(IN_CORE), sentences("core"));
    }

    @Test
    void aSentenceWouldBeSeenAndAnErrorTextIsNone(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("Planted.java");
        Files.writeString(file, """
                class Planted {
                    @Option(description = "how it is done")
                    String say(int n) {
                        if (n < 0) {
                            throw new IllegalArgumentException("there is no such number");
                        }
                        return n + " things are" + " left over" + word;
                    }
                }
                """);
        assertEquals(
                List.of("Planted: how it is done", "Planted:  things are left over"),
                LooseSentences.in(SourceTrees.of(List.of(file))));
    }
}
