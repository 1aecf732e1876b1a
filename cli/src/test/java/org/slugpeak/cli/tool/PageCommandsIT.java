package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Every command of README, docs and hardware notes is typed, in the order of its page, into the packaged tool. */
@EnabledOnOs(OS.LINUX)
final class PageCommandsIT {

    private static final Path ROOT =
            Path.of(System.getProperty("slugpeak.shared")).toAbsolutePath().getParent();

    /** Tried elsewhere: the first by whoever runs this test, the second by .ci/checks/release.sh. */
    private static final Set<String> NOT_THE_TOOL = Set.of(
            "mvn -B verify",
            "mvn -B verify        # passes the tests",
            "sudo apt install ./slugpeak_VERSION_amd64.deb");

    private static final int FEWEST_PAGES = 12;
    private static final int FEWEST_COMMANDS = 50;

    @TempDir
    private static Path made;

    private static Path anyLog;

    @TempDir
    private Path folder;

    private BenchPort port;
    private StandIns standIns;

    static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>();
        for (Path page : PageCommands.pages(ROOT)) {
            if (!PageCommands.of(page).isEmpty()) {
                pages.add(ROOT.relativize(page));
            }
        }
        return pages;
    }

    @BeforeAll
    static void keepALog() throws IOException, InterruptedException {
        anyLog = made.resolve("any.jsonl");
        PackagedTool.runWithInput(made, "0.1\n0.2\n0.1\n", "watch", "--from", "-", "--log", anyLog.toString());
    }

    @BeforeEach
    void layTheBench() throws IOException {
        port = BenchPort.in(folder);
        port.plug(ScpiResponder.reading("+1.25000000E+00"));
        standIns = new StandIns(port.path());
        Files.createSymbolicLink(folder.resolve("shared"), ROOT.resolve("shared"));
    }

    /** Logs that a page only speaks of; others are made by its own commands. */
    private void layLogs(Set<String> commands) throws IOException {
        for (String log : List.of("before.jsonl", "work.jsonl", "after.jsonl")) {
            if (commands.stream().noneMatch(command -> command.contains("--log " + log))) {
                Files.copy(anyLog, folder.resolve(log));
            }
        }
    }

    @AfterEach
    void clearTheBench() {
        port.close();
    }

    @Test
    void thereAreManyOfThem() throws IOException {
        assertTrue(pages().size() >= FEWEST_PAGES, pages().toString());
        int commands = 0;
        for (Path page : pages()) {
            commands += PageCommands.of(ROOT.resolve(page)).size();
        }
        assertTrue(commands >= FEWEST_COMMANDS, "only " + commands);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandOfAPageDoesWhatItSaysOrSaysInOneLineWhatIsMissing(Path page) throws IOException {
        Set<String> commands = PageCommands.of(ROOT.resolve(page));
        layLogs(commands);
        Stream<Executable> typed = commands.stream()
                .filter(command -> !NOT_THE_TOOL.contains(command))
                .map(command -> () -> type(command));
        assertAll(page.toString(), typed);
    }

    private void type(String command) throws IOException, InterruptedException {
        String line = standIns.put(command);
        assertTrue(line.contains("$SLUGPEAK"), command + " is no command of the tool");
        if (standIns.goesOn(line)) {
            try (PackagedTool tool = PackagedTool.startLine(folder, Map.of(), "exec " + line)) {
                assertTrue(tool.line().isPresent(), command);
                tool.signal("INT");
                assertEquals(130, tool.finish().exitCode(), command);
            }
            return;
        }
        Result result = PackagedTool.shell(folder, line);
        if (StandIns.lacksSomething(line)) {
            assertEquals(1, result.exitCode(), command + ": " + result);
            assertEquals(1, result.errors().lines().count(), command + ": " + result.errors());
            assertTrue(result.errors().startsWith("slugpeak"), command + ": " + result.errors());
        } else {
            assertEquals(0, result.exitCode(), command + ": " + result);
        }
    }
}
