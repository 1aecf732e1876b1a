package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.bridge.log.LogReader;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;

class SheetCommandTest {

    @TempDir
    private Path folder;

    private static CommandRun ask(String commandLine) {
        return CommandRun.of(new SheetCommand(), commandLine.split(" ", -1));
    }

    private static List<SessionRecord> read(Path log) throws BridgeException {
        List<SessionRecord> records = new ArrayList<>();
        try (LogReader reader = LogReader.open(log, (line, problem) -> {})) {
            for (Optional<LogEntry> next = reader.next(); next.isPresent(); next = reader.next()) {
                records.add(next.get().record());
            }
        }
        return records;
    }

    @Test
    void keepsASheetOfTheMadeUpSetInTheLog() throws BridgeException {
        Path log = folder.resolve("after.jsonl");
        CommandRun run =
                ask("tarnfield-54a --from sim:aligned --speed 1000 --view none --after --attenuator 1 --log " + log);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.err().contains("21 figures measured, 0 not"), run.err());
        List<SessionRecord> records = read(log);
        SheetWork.Begun begun = records.stream()
                .filter(SheetWork.Begun.class::isInstance)
                .map(SheetWork.Begun.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(Occasion.AFTER, begun.conditions().occasion());
        assertEquals(0.4, begun.conditions().referenceVolts(), 1e-12);
        assertEquals("200 pF", begun.conditions().aerial());
        List<Figure> figures = records.stream()
                .filter(SheetWork.FigureTaken.class::isInstance)
                .map(it -> ((SheetWork.FigureTaken) it).figure())
                .toList();
        assertEquals(21, figures.size());
        // Half a decibel and more: a rectangle of 1 dB has a standard deviation of 0.58 dB.
        assertTrue(figures.stream()
                .filter(it -> it.kind().counts() == FigureKind.Counts.VOLTS_EMF)
                .allMatch(it -> it.sigma() > 0.57));
    }

    @Test
    void saysWhatADetectorCannotShowByLeavingItOut() throws BridgeException {
        Path log = folder.resolve("detector.jsonl");
        CommandRun run = ask("tarnfield-54a --from sim:aligned --speed 1000 --view none --point detector --log " + log);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(read(log).stream()
                .filter(SheetWork.FigureTaken.class::isInstance)
                .map(it -> ((SheetWork.FigureTaken) it).figure().kind())
                .noneMatch(kind -> switch (kind) {
                    case SIGNAL_TO_NOISE, INPUT_FOR_TEN_DB, HUM -> true;
                    default -> false;
                }));
    }

    @ParameterizedTest
    @CsvSource({
        "--from sim:plan --point avc, --point takes voice-coil or detector",
        "--from sim:plan --attenuator 30, --attenuator takes 0 to 20 dB",
        "--from readings.csv, a sheet is measured while the set plays",
        "--from sim:tarnfield, --from sim:plan as before the work",
        "--from sound --mode tone, noise and hum are part of the figures",
        "--from sound --point detector, a sound input hears the voice coil"
    })
    void refusesInOneLineWhatCannotBe(String rest, String said) {
        CommandRun run = ask("tarnfield-54a " + rest);
        assertTrue(run.exitCode() != 0);
        assertTrue(run.err().contains(said), run.err());
    }

    @Test
    void saysWhatAPlanMustHave() throws IOException {
        Path plan = Files.writeString(folder.resolve("if.toml"), """
                name = "IF only"
                if-kHz = 455
                [[stage]]
                name = "IF"
                generator-kHz = "IF"
                inject = "converter grid"
                meter = "detector"
                adjust = ["T1 top"]
                """);
        CommandRun run = ask(plan + " --from sim:plan");
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains("no dial to measure at"), run.err());
    }
}
