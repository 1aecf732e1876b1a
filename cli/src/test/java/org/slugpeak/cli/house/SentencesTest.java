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

    /** Markup and SQL, which nobody reads. */
    private static final Set<String> MARKUP =
            Set.of("Svg", "HtmlReport", "IndexSql", "MarkdownReport", "PdfPrinter", "PageWords");

    private static final Set<String> IN_CLI = Set.of(
            // A source and what it measures: words of the log's format.
            "DialLog: receiver dial",
            "DialLog: dial error",
            // Kinds of entries, as the log spells them but for the hyphens.
            "ReportTables: wrong way",
            "Plot: curve first",
            "Plot: curve second",
            "Plot: curve third",
            "Plot: mark end",
            "Plot: mark middle",
            "ReportTables: cut generator",
            "ReportTables: generator changed",
            "ReportTables: negative going",
            "ReportTables: set up",
            // Classes of the style sheet.
            "GainChart: mark middle",
            "GainChart: label end",
            "GainChart: bar loss",
            "LevelChart: mark end",
            "LevelChart: mark middle",
            "LevelChart: band odd",
            // An error of the way out, with nobody left to take it.
            "Interruption: slugpeak: the source did not let go in time; a log has no end record",
            // A command's name before a warning.
            "DialLog: slugpeak scale: ");

    private static final Set<String> IN_CORE = Set.of(
            // Why a session ended, as the log spells it.
            "EndReason: broken off: the log has no end record",
            "EndReason: curve complete",
            "EndReason: plan through",
            "EndReason: sheet complete",
            "EndReason: source ended",
            "EndReason: terminal closed",
            "EndReason: the generator does not follow",
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

    /** Their sentences are error texts, put together here and thrown, or told of what is no reading, by others. */
    private static final Set<String> ERRORS_OF_BRIDGE = Set.of(
            "CsvDecoder",
            "CsvOptions",
            "DampingReader",
            "DescribedGenerator",
            "DescriptionReader",
            "FrameLanguage",
            "FrameMark",
            "FrameParts",
            "FrameReader",
            "GeneratorDialogue",
            "GeneratorReader",
            "HeardFamilies",
            "InstrumentSources",
            "IntermediatesReader",
            "JavaSound",
            "LineLanguage",
            "NumberLines",
            "PlainWords",
            "PlanReader",
            "PortTrouble",
            "Preamble",
            "Row",
            "Section",
            "SessionLog",
            "SettingUp",
            "SetupReader",
            "StartLine",
            "StepReader",
            "StepRules",
            "Suggestion",
            "TomlFile",
            "Trying",
            "UsbTmcPort",
            "WavHeader",
            "Wording");

    private static final Set<String> IN_BRIDGE = Set.of(
            // What error texts call standard input, and other parts of them.
            "CsvSource: standard input",
            "CalibrationStore: ' must be a moment such as 2026-11-25T08:00:00Z, not '",
            "SoundOptions: voltage at full scale",
            // The names that instruments go by which have none, where their descriptions have titles.
            "Identifying: a meter that does not say its name",
            "Identity: an instrument without a name",
            "ScpiDecoder: a meter that has not said its name",
            // Names that loggers give to columns and units, to be recognised.
            "ColumnName: date time",
            "ColumnName: elapsed time",
            "ColumnName: relative time",
            "ReadingUnit: mv ac",
            "ReadingUnit: mv dc",
            // What units of fields are called where the format is documented.
            "Unit: by check",
            "Unit: by figure",
            "Unit: by topic",
            "Unit: true, or left out",
            // Names of threads.
            "LineReader: sound input",
            "LineReader: sound input closing",
            "ReopeningCarrier: reader of ",
            // The head of a file that only this program reads.
            "CalibrationStore: # Made by slugpeak check --from sound --volts; delete this file to go back to levels relative to full"
                    + " scale.\ndevice = \"",
            // What the simulated hand writes down.
            "RehearsalChore: nothing was asked for any more",
            "RehearsalChore: rehearsal ended: ",
            "RehearsalChore: the hand did not find '",
            "SweepChore: , outwards, counting turns");

    private static Set<String> sentences(String module) {
        List<Path> files = Sources.of(module).stream()
                .filter(file -> !file.getParent().endsWith("cli/words"))
                .toList();
        Set<String> found = new TreeSet<>(LooseSentences.in(SourceTrees.of(files)));
        found.removeIf(each -> isOf(each, ERRORS) || isOf(each, ERRORS_OF_BRIDGE) || isOf(each, MARKUP));
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
    void noClassOfTheBridgeHoldsASentenceButErrorTexts() {
        assertEquals(new TreeSet<>(IN_BRIDGE), sentences("bridge"));
    }

    /** A class that makes no error text any more must not go on hiding what else is written in it. */
    @Test
    void everyClassThatIsExcusedForItsErrorTextsHasSome() {
        Set<String> excused = new TreeSet<>(ERRORS_OF_BRIDGE);
        LooseSentences.in(SourceTrees.of(Sources.of("bridge")))
                .forEach(found -> excused.remove(found.substring(0, found.indexOf(':'))));
        assertEquals(Set.of(), excused);
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
                        listener.garbled("line 7", "there is no number");
                        return n + " things are" + " left over" + word;
                    }
                }
                """);
        assertEquals(
                List.of("Planted: how it is done", "Planted:  things are left over"),
                LooseSentences.in(SourceTrees.of(List.of(file))));
    }
}
