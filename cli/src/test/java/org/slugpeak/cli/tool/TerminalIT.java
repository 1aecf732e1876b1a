package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tool in a window with a shell: stopped and gone on with, and asked by pedals and by the mouse. */
@EnabledOnOs(OS.LINUX)
final class TerminalIT {

    private static final String CONTROL_Z = "\u001a";

    @TempDir
    private Path folder;

    private Window watching(String more) throws IOException {
        return watching("", more);
    }

    private Window watching(String variable, String more) throws IOException {
        Window window = new Window(folder);
        window.type(variable + " sh -c '\"$SLUGPEAK\" watch --from sim --cue off " + more + "; echo left with $?'\n");
        window.await("q quit");
        window.await("below best");
        return window;
    }

    @Test
    void controlZGivesTheWindowBackAndFgBringsTheWholeScreen() throws IOException {
        try (Window window = watching("")) {
            String keys = keys(window.shown());
            window.type(CONTROL_Z);
            window.await("Stopped");
            assertFalse(window.shown().contains("q quit"), window::shown);
            window.type("stty -a | grep -o ' icanon' | tr -d '\\n'; echo ' modes'\n");
            window.await(" icanon modes");
            window.type("fg\n");
            window.await("q quit");
            window.await("below best");
            for (String part : List.of(" sim ", "BEST", "turn slowly", keys)) {
                assertTrue(window.shown().contains(part), () -> part + " is missing on\n" + window.shown());
            }
            assertFalse(window.shown().contains("Stopped"), window::shown);
            leave(window);
        }
    }

    private static void leave(Window window) {
        window.type("q");
        window.await("left with 0");
    }

    private static String keys(String shown) {
        return shown.lines()
                .filter(line -> line.contains("space mark"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[1;2P", "\u001b[25~", "\u001b[24;2~", "\u001b[<2;10;5M"})
    void pedalsAndAButtonOfTheMouseAreKeys(String sent) throws IOException {
        try (Window window = watching("--key mark=f13,f24,mouse3")) {
            window.type(sent);
            window.await("mark 1");
            leave(window);
        }
    }

    @Test
    void theMouseBelongsToTheToolOnlyWhileItRunsAndOneOfItsButtonsIsAKey() throws IOException {
        try (Window window = watching("--key mark=mouse3")) {
            assertTrue(window.sent().contains("\u001b[?1000h"), "taken");
            window.type(CONTROL_Z);
            window.await("Stopped");
            assertTrue(lastly(window.sent()).equals("off"), "given back while it is stopped");
            window.type("fg\n");
            window.await("q quit");
            assertTrue(lastly(window.sent()).equals("on"), "taken again");
            leave(window);
            assertTrue(lastly(window.sent()).equals("off"), "given back in the end");
        }
        try (Window window = watching("")) {
            assertFalse(window.sent().contains("\u001b[?1000h"), "left alone where no button is a key");
        }
    }

    private static String lastly(String sent) {
        return sent.lastIndexOf("\u001b[?1000h") > sent.lastIndexOf("\u001b[?1000l") ? "on" : "off";
    }

    @ParameterizedTest
    @CsvSource({"LC_ALL=C,''", "'',--ascii"})
    void whereBlockCharactersAreNotKnownOrNotWantedNoneIsSent(String variable, String option) throws IOException {
        try (Window window = watching(variable, option)) {
            assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(window.sent()), window::shown);
            leave(window);
        }
    }

    @Test
    void whoAsksForLinesIsToldThatNoKeyIsRead() throws IOException {
        try (Window window = new Window(folder)) {
            window.type("\"$SLUGPEAK\" demo --speed 1000 --view lines | tail -n 1; echo pip\"e\"d\n");
            window.await("piped");
            assertFalse(window.shown().contains("no key is read"), "through a pipe nobody expects one");
            window.type("\"$SLUGPEAK\" watch --from sim --view lines\n");
            window.await("no key is read with --view lines; --plain has lines and keys");
            window.type("\u0003");
        }
    }

    @Test
    void whoWantsNoColourIsSentNone() throws IOException {
        try (Window window = watching("NO_COLOR=1", "")) {
            assertFalse(window.sent().contains("8;5;"), window::sent);
            leave(window);
        }
    }

    @Test
    void anUnknownKeyChangesNothing() throws IOException {
        try (Window window = watching("--log log.jsonl")) {
            window.type("zjy\u001b[21;5~\u001b[<0;3;3M\u0001\u0005");
            window.type(" ");
            window.await("mark 1");
            leave(window);
            String log = Files.readString(folder.resolve("log.jsonl"));
            assertEquals(1, log.split("\"text\":\"mark", -1).length - 1, log);
            assertFalse(log.contains("\"adjuster\""), log);
            assertEquals(1, log.split("\"text\":\"level:", -1).length - 1, "what the simulated bench says by itself");
        }
    }
}
