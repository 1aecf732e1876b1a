package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher of the archive for a Java that is there already, among Javas that only say who they are and what they were given. */
@DisabledOnOs(OS.WINDOWS)
final class LauncherTest {

    private static final Path LAUNCHER =
            Path.of(System.getProperty("slugpeak.shared")).toAbsolutePath().resolveSibling("slugpeak");

    @TempDir
    private Path folder;

    private Path tool;

    /** How it ended, and what it said on either stream. */
    private record Ended(int exitCode, String said) {}

    /** The places where systems keep their Javas are looked for in the test's own folder. */
    @BeforeEach
    void unpackTheArchive() throws IOException {
        String script = Files.readString(LAUNCHER);
        for (String place : List.of("/usr/lib/jvm/", "/opt/", "/Library/", "/usr/local/opt/")) {
            assertTrue(script.contains(" " + place), place);
            script = script.replace(" " + place, " \"" + folder + "\"" + place);
        }
        tool = Files.createDirectories(folder.resolve("radio tools")).resolve("slugpeak");
        executable(tool, script);
        Files.createDirectories(tool.resolveSibling("lib"));
        Files.createFile(tool.resolveSibling("lib").resolve("slugpeak-cli.jar"));
        Files.createDirectories(folder.resolve("none"));
    }

    private static void executable(Path file, String script) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, script);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** A Java that says its version only when it is asked. */
    private Path java(String home, String version) throws IOException {
        Path place = folder.resolve(home);
        executable(place.resolve("bin/java"), """
                #!/bin/sh
                if [ "$1" = -version ]; then echo 'openjdk version "%s" 2026-01-20' >&2; exit 0; fi
                echo "Java %s"
                for each; do echo "<$each>"; done
                """.formatted(version, version));
        return place;
    }

    private Path javaWithItsFile(String home, String version) throws IOException {
        Path place = java(home, version);
        Files.writeString(
                place.resolve("release"),
                "IMPLEMENTOR=\"x\"\nJAVA_RUNTIME_VERSION=\"0\"\nJAVA_VERSION=\"" + version
                        + "\"\nJAVA_VERSION_DATE=\"1999-01-01\"\n");
        return place;
    }

    private Ended start(String path, String javaHome, String... args) throws IOException, InterruptedException {
        List<String> command = new java.util.ArrayList<>(List.of("/bin/sh", tool.toString()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().clear();
        builder.environment().put("PATH", path);
        builder.environment().put("HOME", folder.resolve("home").toString());
        if (!javaHome.isEmpty()) {
            builder.environment().put("JAVA_HOME", javaHome);
        }
        Process process = builder.start();
        process.getOutputStream().close();
        try (InputStream said = process.getInputStream()) {
            String text = new String(said.readAllBytes(), StandardCharsets.UTF_8);
            return new Ended(process.waitFor(), text);
        }
    }

    private void assertStarts(String version, Ended ended) {
        assertEquals("Java " + version, ended.said().lines().findFirst().orElse(""), ended.said());
        assertEquals(0, ended.exitCode());
    }

    private String none() {
        return folder.resolve("none").toString();
    }

    @Test
    void theOneThatTheUserChoseComesFirst() throws Exception {
        Path path = javaWithItsFile("on path", "21.0.2");
        assertStarts(
                "17.0.15",
                start(path + "/bin", javaWithItsFile("chosen one", "17.0.15").toString()));
    }

    @Test
    void oneThatIsTooOldIsPassedOver() throws Exception {
        Path path = java("on path", "21.0.2");
        assertStarts(
                "21.0.2",
                start(path + "/bin", javaWithItsFile("chosen", "11.0.20").toString()));
    }

    @Test
    void whatThePathNamesMayBeALink() throws Exception {
        Path home = javaWithItsFile("elsewhere/jdk", "22");
        Path link = Files.createDirectories(folder.resolve("links")).resolve("java");
        Files.createSymbolicLink(link, home.resolve("bin/java"));
        assertStarts("22", start(link.getParent() + ":/usr/bin:/bin", ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "usr/lib/jvm/java-17-x",
                "opt/jdk-17",
                "home/.sdkman/candidates/java/current",
                "Library/Java/JavaVirtualMachines/x.jdk/Contents/Home",
                "usr/local/opt/openjdk"
            })
    void oneIsFoundWhereInstallersPutIt(String place) throws Exception {
        java(place, "17.0.1");
        assertStarts("17.0.1", start(none(), ""));
    }

    @Test
    void withoutAnyItSaysWhatToInstall() throws Exception {
        assertEquals(
                new Ended(
                        1,
                        "slugpeak: no Java 17 or newer found; install a Java runtime, version 17 or newer, or set JAVA_HOME"
                                + " to one\n"),
                start(none(), ""));
    }

    /** A variable may point to where nothing is, and Java 8 called itself 1.8. */
    @Test
    void withOldOnesOnlyItNamesOne() throws Exception {
        Path old = java("old", "1.8.0_301");
        Ended ended = start(old + "/bin", folder.resolve("gone").toString());
        assertEquals(1, ended.exitCode());
        assertTrue(ended.said().startsWith("slugpeak: no Java 17 or newer found (only 8, at " + old), ended.said());
        assertEquals(1, ended.said().lines().count());
    }

    @Test
    void whatIsTypedArrivesAsItIs() throws Exception {
        Path path = javaWithItsFile("on path", "17");
        List<String> typed = List.of("watch", "--log", "my log.jsonl", "a\"b'c", "*", "$HOME", "", "\\x");
        List<String> arrived = start(path + "/bin", "", typed.toArray(String[]::new))
                .said()
                .lines()
                .toList();
        int from = arrived.indexOf("<" + tool.resolveSibling("lib").resolve("slugpeak-cli.jar") + ">");
        assertEquals(typed.stream().map(each -> "<" + each + ">").toList(), arrived.subList(from + 1, arrived.size()));
    }
}
