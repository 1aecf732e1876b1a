package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Who cannot see the screen hears why a session does not begin, or ends. The voice is one that writes down what it is given. */
@EnabledOnOs(OS.LINUX)
final class SpokenFailureIT {

    @TempDir
    private Path folder;

    @BeforeEach
    void aVoiceIsThere() throws IOException {
        Path voice = Files.writeString(
                folder.resolve("espeak-ng"), "#!/bin/sh\nPATH=/usr/bin:/bin\n{ cat; echo; } >>" + folder + "/heard\n");
        Files.writeString(
                folder.resolve("spd-say"),
                "#!/bin/sh\nPATH=/usr/bin:/bin\nshift $(($# - 1))\necho \"$1\" >>" + folder + "/heard\n");
        assertTrue(voice.toFile().setExecutable(true));
        assertTrue(folder.resolve("spd-say").toFile().setExecutable(true));
    }

    private String heard() throws IOException {
        Path file = folder.resolve("heard");
        return Files.exists(file) ? Files.readString(file) : "";
    }

    private Result slugpeak(String words) throws IOException, InterruptedException {
        return PackagedTool.shell(folder, "PATH=$PWD:$PATH $SLUGPEAK " + words + " </dev/null");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "watch --from /dev/ttyNONE --speak",
                "watch --speak --from nowhere.csv",
                "watch --speak --from - --view none",
                "align no-such-plan --speak --from sim:plan",
                "curve --speak --from sim --span 440..470"
            })
    void whatKeepsItFromMeasuringIsSpoken(String words) throws IOException, InterruptedException {
        Result result = slugpeak(words);
        assertEquals(1, result.exitCode(), result.errors());
        String reason = result.errors().strip().replaceFirst("^slugpeak [a-z]+: ", "");
        String beginning = reason.split("[:;(/]", 2)[0].strip();
        assertTrue(heard().contains(beginning), beginning + " is not in " + heard());
    }

    @Test
    void aWordThatIsNotKnownIsSpoken() throws IOException, InterruptedException {
        Result result = slugpeak("watch --speak --from sim --sek dip");
        assertEquals(2, result.exitCode(), result.errors());
        assertTrue(heard().contains("is not known here"), heard());
    }

    @Test
    void nothingIsSpokenWhereNobodyAskedForIt() throws IOException, InterruptedException {
        assertEquals(1, slugpeak("watch --from /dev/ttyNONE").exitCode());
        assertFalse(Files.exists(folder.resolve("heard")));
    }
}
