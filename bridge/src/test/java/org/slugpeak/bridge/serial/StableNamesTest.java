package org.slugpeak.bridge.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@EnabledOnOs({OS.LINUX, OS.MAC})
class StableNamesTest {

    @TempDir
    Path folder;

    @Test
    void aLinkNamesItsDeviceAndADanglingOneIsPassedOver() throws IOException {
        Path device = Files.createFile(folder.toRealPath().resolve("ttyUSB0"));
        Path links = Files.createDirectory(folder.resolve("by-id"));
        Path link = Files.createSymbolicLink(links.resolve("usb-Ember_Fell_BM-450-if00"), device);
        Files.createSymbolicLink(links.resolve("usb-gone"), folder.resolve("ttyUSB7"));
        StableNames names = StableNames.in(links);
        assertEquals(Optional.of(link.toString()), names.of(device.toString()));
        assertEquals(Optional.empty(), names.of("/dev/ttyS0"));
    }

    @Test
    void whereThereAreNoLinksThereAreNoNames() {
        assertEquals(Optional.empty(), StableNames.in(folder.resolve("none")).of("/dev/ttyUSB0"));
    }
}
