package org.slugpeak.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceDescription.MeterKind;

class SourceTextTest {

    private static void says(String expected, SourceDescription description) {
        assertEquals(expected, description.match(new SourceText()));
    }

    @Test
    void anInstrumentHasItsOwnName() {
        says("EMBER FELL BM-450", new SourceDescription.Instrument("EMBER FELL BM-450"));
    }

    @Test
    void textIsNamedByItsFileAndColumn() {
        says("standard input", new SourceDescription.Text(Optional.empty(), "", "", false));
        says("a.csv, column 'AVC'", new SourceDescription.Text(Optional.of("a.csv"), "AVC", "V", false));
        says(
                "a.csv, column 'dBu', turned from decibels into V",
                new SourceDescription.Text(Optional.of("a.csv"), "dBu", "V", true));
        says(
                "standard input, turned from decibels into ratios",
                new SourceDescription.Text(Optional.empty(), "", "", true));
    }

    @Test
    void soundSaysHowItCameAndWhatItsScaleIs() {
        says(
                "sound input Line (48 kHz 16-bit, 2 channels); full scale 2.000 V RMS",
                new SourceDescription.Audio(
                        "Line", OptionalDouble.empty(), 48_000, 2, 16, false, OptionalDouble.of(2)));
        says(
                "tone.wav (44.1 kHz 32-bit float, mono, 1.5 s); not calibrated, levels relative to full scale",
                new SourceDescription.Audio(
                        "tone.wav", OptionalDouble.of(1.5), 44_100, 1, 32, true, OptionalDouble.empty()));
    }

    @Test
    void aLogSaysWhenAndWhereItWasRecorded() {
        says(
                "a.jsonl, recorded 2026-11-25T07:30:00Z from /dev/ttyUSB0",
                new SourceDescription.Log("a.jsonl", Instant.parse("2026-11-25T07:30:00Z"), "/dev/ttyUSB0"));
    }

    @Test
    void aSimulationIsCalledOne() {
        says(
                "simulated Tarnfield 54A, multimeter, 3 readings/s",
                new SourceDescription.Simulation("Tarnfield 54A", false, MeterKind.MULTIMETER));
        says(
                "simulated set of the plan two-bands, sound card, 20 readings/s",
                new SourceDescription.Simulation("two-bands", true, MeterKind.SOUND_CARD));
    }
}
