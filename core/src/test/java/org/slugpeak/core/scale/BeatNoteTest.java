package org.slugpeak.core.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Carriers: multiples of 9 kHz (Regions 1 and 3) and 10 kHz (Region 2), Radio Regulations. */
class BeatNoteTest {

    @Test
    void noteThatRisesWhenTheGeneratorIsNudgedUpMeansGeneratorHigh() {
        assertEquals(999_120, new BeatNote(999e3, 1, 120, BeatNote.Direction.HIGH).generatorHz());
        assertEquals(998_880, new BeatNote(999e3, 1, 120, BeatNote.Direction.LOW).generatorHz());
    }

    @Test
    void zeroBeatIsTheCarrier() {
        assertEquals(999e3, new BeatNote(999e3, 1, 0, BeatNote.Direction.LOW).generatorHz());
    }

    @Test
    void secondHarmonicHalvesBeatAndUncertainty() {
        KnownPoint point = new BeatNote(910e3, 2, 300, BeatNote.Direction.HIGH).at(460e3, 10);
        assertEquals(455_150, point.trueHz());
        assertEquals(5, point.sigmaHz());
        assertEquals(4_850, point.dialErrorHz());
    }

    @Test
    void refusesABeatThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new BeatNote(0, 1, 0, BeatNote.Direction.LOW));
        assertThrows(IllegalArgumentException.class, () -> new BeatNote(1e6, 0, 0, BeatNote.Direction.LOW));
        assertThrows(IllegalArgumentException.class, () -> new BeatNote(1e6, 1, -1, BeatNote.Direction.LOW));
    }
}
