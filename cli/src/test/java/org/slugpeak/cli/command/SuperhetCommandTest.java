package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SuperhetCommandTest {

    private static CommandRun ask(String commandLine) {
        return CommandRun.of(new SuperhetCommand(), commandLine.split(" "));
    }

    private static void assertSays(CommandRun run, String... parts) {
        assertEquals(0, run.exitCode(), run.err());
        String said = run.out().replaceAll(" +", " ");
        assertAll(java.util.Arrays.stream(parts)
                .map(part -> () -> assertTrue(said.contains(part), () -> "no '" + part + "' in:\n" + said)));
    }

    @Test
    void tellsOscillatorAndImage() {
        assertSays(
                ask("tune --if 455 --dial 600,1400"),
                "600 kHz 1055 kHz 1510 kHz -",
                "1400 kHz 1855 kHz 2310 kHz 490 kHz");
    }

    @Test
    void tellsThatASecondHarmonicFools() {
        assertSays(
                ask("tune --dial 1400 --generator 700"),
                "FOOLS: generator 700 kHz times 2 = 1400 kHz falls on the tuned frequency of dial 1400 kHz");
    }

    @Test
    void tellsThatNothingFools() {
        assertSays(ask("tune --dial 1000 --generator 1234"), "neither it nor a harmonic");
    }

    @Test
    void tellsWhereTheSetWhistles() {
        assertSays(ask("tune --dial 910"), "AVOID dial 910 kHz: the set whistles at 910 kHz");
    }

    @Test
    void namesWantedImageAndBreakThrough() {
        assertSays(
                ask("responses --dial 1000 --order 3"),
                "1 0 1 455 kHz IF break-through",
                "2 1 1 1000 kHz wanted",
                "2 1 1 1910 kHz image");
        assertSays(ask("responses --dial 16MHz --below --order 2"), "2 1 1 15.09 MHz image", "2 1 1 16 MHz wanted");
    }

    @Test
    void designsAPadderCircuit() {
        assertSays(
                ask("track --coil 220"),
                "oscillator coil 124.83 uH",
                "padder 407.3 pF",
                "trimmer 10.21 pF",
                "600 kHz 319.8 pF 1055 kHz +0.0 kHz",
                "1600 kHz 45.0 pF 2043.3 kHz -11.7 kHz");
    }

    @Test
    void tellsImageRatioFieldLoadingAndPower() {
        assertSays(ask("image --dial 1000 --q 80"), "image 1910 kHz, 40.9 dB down");
        assertSays(ask("loop --turns 5 --diameter 15 --distance 60 --emf 1mV --resistance 459"), "52.2 uV/m");
        assertSays(
                ask("loading --source 500k --meter 10M --shown 1"), "0.42 dB (4.76 %) low", "without the meter: 1.05");
        assertSays(ask("power --load 3.2"), "50 mW in 3.2 ohm: 0.400 V RMS");
        assertSays(ask("power --load 3.2 --volts 1.265"), "500.1 mW");
    }

    @Test
    void warnsOfALoopTooNear() {
        assertSays(ask("loop --turns 5 --diameter 15 --distance 25 --emf 1mV --resistance 459"), "CHECK");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tune --dial 600",
                "responses --dial 600",
                "track --coil 220",
                "image --dial 1000 --q 80",
                "loop --turns 5 --diameter 15 --distance 60 --emf 1mV --resistance 459",
                "loading --source 1M --meter 10M",
                "power --load 4"
            })
    void explainsWithUnitsAndSource(String question) {
        assertSays(ask(question + " --explain"), "formula: ", "units: ", "source: ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tune --dial abc", "tune --dial -5", "tune --dial 600V", "track --coil 220 --at 600,500,1400",
                "track --coil 220 --band 1600,540", "image --dial 1000 --q", "power --load 0", "power --load 1e999"
            })
    void refusesNonsenseWithExitCodeTwo(String question) {
        CommandRun run = ask(question);
        assertEquals(2, run.exitCode());
        assertTrue(run.out().isEmpty());
        assertTrue(!run.err().isBlank() && !run.err().contains("\tat "), run.err());
    }
}
