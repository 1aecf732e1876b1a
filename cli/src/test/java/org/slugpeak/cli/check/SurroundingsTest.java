package org.slugpeak.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurroundingsTest {

    @TempDir
    private Path folder;

    private List<String> lines(String javaHome, Path state) {
        return lines("Linux", javaHome, state);
    }

    private List<String> lines(String name, String javaHome, Path state) {
        Properties system = new Properties();
        system.putAll(Map.of(
                "os.name", name,
                "os.version", "6.1",
                "os.arch", "amd64",
                "java.version", "17.0.15",
                "java.vendor", "Somebody",
                "java.home", javaHome,
                "slugpeak.home", folder.toString()));
        return new Surroundings(Map.of("TERM", "xterm"), system, state).lines(false);
    }

    private static void assertHas(List<String> lines, String end) {
        assertTrue(lines.stream().anyMatch(line -> line.endsWith(end)), lines + " without " + end);
    }

    @Test
    void tellSystemTerminalAndWhetherTheOutputIsSeen() {
        List<String> lines = lines("/usr/lib/java", folder);
        assertHas(lines, "Linux 6.1 amd64");
        assertHas(lines, "xterm, output to a pipe or a file");
    }

    @Test
    void ownUpToASystemOnWhichNobodyHasRunIt() {
        assertHas(
                lines("Windows 11", "/", folder),
                "Windows 11 6.1 amd64; slugpeak was never run on one: tell us what works and what does not");
    }

    @Test
    void tellItsOwnJavaFromOneThatWasFound() {
        assertHas(lines(folder.resolve("runtime").toString(), folder), "17.0.15, Somebody, its own");
        assertHas(lines("/usr/lib/java", folder), "17.0.15, Somebody, found on this machine");
    }

    @Test
    void tellWhetherTheStateFolderIsThere() {
        assertHas(lines("/", folder), folder.toString());
        assertHas(lines("/", folder.resolve("none")), "none, not there yet");
    }

    @Test
    void tellTheRightToUseAPortWithoutOpeningIt() {
        assertEquals("you may use it", Surroundings.right(folder));
    }

    @Test
    void keepToThemselvesWhoTheUserIs() {
        Discretion discretion = new Discretion("/home/meadow", "meadow");
        assertEquals("~/state of USER", discretion.of("/home/meadow/state of meadow"));
        assertEquals("a pipe", new Discretion("/", "pi").of("a pipe"));
    }
}
