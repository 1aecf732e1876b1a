package org.slugpeak.bridge.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.testkit.PseudoTerminal;

/** What the user is told for each error number of Linux (asm-generic/errno-base.h), and of Windows for its ports. */
@EnabledOnOs(OS.LINUX)
class PortTroubleTest {

    private static final int EIO = 5;
    private static final int EAGAIN = 11;
    private static final int EACCES = 13;
    private static final int EBUSY = 16;
    private static final int ENOTTY = 25;

    @TempDir
    Path folder;

    @Test
    void noPermissionNamesTheGroupAndTheCommand() throws IOException {
        try (PseudoTerminal terminal = PseudoTerminal.open()) {
            String group = Files.readAttributes(Path.of(terminal.path()), PosixFileAttributes.class)
                    .group()
                    .getName();
            assertEquals(
                    "you may not use " + terminal.path() + ": it belongs to group '" + group
                            + "'; run 'sudo usermod -aG " + group + " $USER', then log out and in again",
                    said(terminal.path(), EACCES));
        }
    }

    @Test
    void aPortHeldByAnotherProgramIsInUse() {
        try (PseudoTerminal terminal = PseudoTerminal.open()) {
            String expected = terminal.path() + " is in use: close the other program that uses it, then try again";
            assertEquals(expected, said(terminal.path(), EAGAIN));
            assertEquals(expected, said(terminal.path(), EBUSY));
        }
    }

    @Test
    void aDeviceThatDoesNotAnswerIsPulledAndPutInAgain() {
        try (PseudoTerminal terminal = PseudoTerminal.open()) {
            assertTrue(said(terminal.path(), EIO).endsWith("pull the plug and put it in again"));
        }
    }

    @Test
    void filesFoldersAndOtherDevicesAreNoSerialPorts() throws IOException {
        Path file = Files.createFile(folder.resolve("readings.txt"));
        String rest = " is no serial port: see 'slugpeak ports' for what is there";
        assertEquals(
                file + " is a file of an unknown kind: readings end in .csv, session logs in .jsonl, audio in .wav",
                said(file.toString(), ENOTTY));
        assertEquals(folder + " is a folder: name a port or a file", said(folder.toString(), EACCES));
        assertEquals("/dev/zero" + rest, said("/dev/zero", ENOTTY));
    }

    @ParameterizedTest
    @ValueSource(strings = {"192.168.1.21:5025", "generator.local:5025", "[fe80::1]:5025"})
    void anAddressOnTheNetworkIsWrittenWithItsWord(String address) {
        assertEquals(
                "there is no port " + address + ": if it is on the network, write tcp:" + address,
                said(address, PortTrouble.NO_SUCH_PORT));
    }

    @Test
    void whatIsNotThereIsPluggedIn() {
        String path = folder.resolve("ttyUSB9").toString();
        assertEquals(
                "there is no port " + path + ": plug the instrument in, and see 'slugpeak ports' for what is there",
                said(path, PortTrouble.NO_SUCH_PORT));
        assertEquals(
                "there is no port COM9: plug the instrument in, and see 'slugpeak ports' for what is there",
                said("COM9", PortTrouble.NO_SUCH_PORT));
    }

    /** Errors of Windows by winerror.h: 5 access denied, 31 general failure, 32 sharing violation, 1167 not connected. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "COM3 | 5 | COM3 is in use: close the other program that uses it, then try again",
                "COM3 | 32 | COM3 is in use: close the other program that uses it, then try again",
                "\\\\.\\COM12 | 1167 | \\\\.\\COM12 does not answer (not connected): pull the plug and put it in again",
                "COM3 | 999 | COM3 does not open (system error 999): pull the plug, put it in again, and see 'slugpeak ports'"
                        + " for what is there"
            })
    void portsOfWindowsGoByTheNumbersOfWindows(String port, int code, String expected) {
        assertEquals(expected, said(port, code));
    }

    @Test
    void everyLineIsOneLine() {
        for (int code = -1; code < 140; code++) {
            assertEquals(1, said("/dev/null", code).lines().count());
        }
    }

    private static String said(String path, int code) {
        return PortTrouble.explain(path, code).getMessage();
    }
}
