package org.slugpeak.bridge.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;

class DescriptionReaderTest {

    static final List<String> SHIPPED = Instruments.SHIPPED;

    @TempDir
    Path folder;

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void whatComesWithTheToolIsSound(String name) throws BadConfiguration {
        InstrumentDescription description = Instruments.create().find(name);
        assertEquals(name, description.name());
        assertFalse(description.title().isEmpty());
        assertTrue(description.decoders().create(MeterSetting.DEFAULT) != null);
    }

    @Test
    void theBoundsOfTheBoardAreThoseOfItsPage() throws BadConfiguration {
        LinkBounds bounds = Instruments.create().find("slugpeak-adc").bounds();
        assertEquals(
                new LinkBounds(
                        OptionalDouble.of(12.5),
                        OptionalDouble.of(0.003),
                        OptionalDouble.of(47.5),
                        OptionalDouble.of(0.001),
                        OptionalDouble.of(55)),
                bounds);
        assertEquals(LinkBounds.NONE, Instruments.create().find("generic-line").bounds());
    }

    @Test
    void boundsAreNumbersAboveNothing() {
        assertEquals("FILE:5: 'noise' must be greater than 0, not 0.0", mistakesIn("""
                        name = "board"
                        speaks = "line"

                        [bounds]
                        noise = 0.0

                        [line]
                        """));
    }

    @Test
    void everyFileThatIsPackagedIsListed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("slugpeak.shared"), "instruments"))) {
            Set<String> names = files.map(file -> file.getFileName().toString().replace(".toml", ""))
                    .collect(Collectors.toSet());
            assertEquals(Set.copyOf(Instruments.SHIPPED), names);
        }
    }

    @Test
    void aSlipOfThePenInTheNameIsAnswered() {
        assertEquals(
                "no instrument is called 'generic-scip'; did you mean 'generic-scpi'? (or name a file that ends in .toml)",
                mistake(() -> Instruments.create().find("generic-scip")));
    }

    @Test
    void allMistakesAreSaidAtOnceWithTheirLines() {
        String said = mistakesIn("""
                name = "My Board"
                speaks = "line"

                [link]
                baud = "fast"
                stopbits = 2

                [line]
                separator = "komma"
                value-field = 0
                scale = true
                time-field = 1

                [line.checksum]
                kind = "crc8"
                """);
        assertEquals("""
                FILE:1: 'name' must be lower-case letters, digits and hyphens, not 'My Board'
                FILE:5: 'baud' must be a whole number from 50 to 4000000, not 'fast'
                FILE:6: 'stopbits' is not known in [link]; did you mean 'stop-bits'?
                FILE:9: 'komma' is not known for 'separator'; did you mean 'comma'?
                FILE:10: 'value-field' must be a whole number from 1 to 64, not 0
                FILE:11: 'scale' must be a number, not true
                FILE:12: 'time-field' needs 'time-unit' too: "s", "ms", "us" or "ns"
                FILE:14: 'after' is missing in [line.checksum]: expected text in quotes
                FILE:15: 'crc8' is not known for 'kind'; did you mean 'crc-8'?""", said);
    }

    @Test
    void whatIsNoTomlIsSaidWithItsLine() {
        String said = mistakesIn("name = \"board\"\nspeaks = \"line\n");
        assertTrue(said.startsWith("FILE:2: "), said);
        assertEquals(1, said.lines().count());
    }

    @Test
    void anUnknownLanguageIsSaidAndItsTableIsNotBlamedToo() {
        assertEquals(
                "FILE:2: 'scipy' is no language of instruments; did you mean 'scpi'?",
                mistakesIn("name = \"m\"\nspeaks = \"scipy\"\n[scpi]\nremote = \"\"\n"));
    }

    @Test
    void aMissingLanguageIsSaid() {
        assertEquals(
                "FILE:1: 'speaks' is missing at the top of a description: expected text in quotes",
                mistakesIn("name = \"m\"\n"));
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        Path file = folder.resolve("none.toml");
        assertEquals(
                "there is no instrument description " + file + ": is the name right?",
                mistake(() -> Instruments.create().find(file.toString())));
    }

    @Test
    void aFileThatIsNoTextIsSaid() throws IOException {
        Path file = folder.resolve("binary.toml");
        Files.write(file, new byte[] {(byte) 0xC3, (byte) 0x28, 0, (byte) 0xFF});
        assertEquals(
                file + " cannot be read (it is no text in UTF-8): give a text file in UTF-8 that you may read",
                mistake(() -> Instruments.create().find(file.toString())));
    }

    @Test
    void twoPackagesMustNotClaimOneLanguage() {
        DecoderProvider one = provider("morse");
        assertEquals(
                "two packages claim the instrument language 'morse': take one of them off the class path",
                mistake(() -> Instruments.with(List.of(one, provider("morse")))));
    }

    @Test
    void aRangeThatCannotBeSetIsRefusedBeforeThePortIsOpened() throws BadConfiguration {
        MeterSetting tenVolts = new MeterSetting(MeterSetting.Function.DC, java.util.OptionalDouble.of(10));
        InstrumentDescription line = Instruments.create().find("generic-line");
        assertEquals(
                "the range of an instrument that prints lines cannot be set from here: set it on the instrument and leave"
                        + " --range out",
                mistake(() -> line.decoders().create(tenVolts)));
    }

    @Test
    void aRangeMustBePositive() {
        for (double volts : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            java.util.OptionalDouble range = java.util.OptionalDouble.of(volts);
            assertThrows(IllegalArgumentException.class, () -> new MeterSetting(MeterSetting.Function.DC, range));
        }
    }

    private static DecoderProvider provider(String language) {
        return new DecoderProvider() {
            @Override
            public String language() {
                return language;
            }

            @Override
            public DecoderFactory read(Section section) {
                throw new AssertionError("never asked");
            }
        };
    }

    private String mistakesIn(String toml) {
        Path file = folder.resolve("mine.toml");
        try {
            Files.writeString(file, toml, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return mistake(() -> Instruments.create().find(file.toString())).replace(file.toString(), "FILE");
    }

    private static String mistake(org.junit.jupiter.api.function.Executable action) {
        return assertThrows(BadConfiguration.class, action).getMessage();
    }
}
