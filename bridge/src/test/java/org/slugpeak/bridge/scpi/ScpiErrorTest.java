package org.slugpeak.bridge.scpi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forms of SCPI-1999 volume 2 section 21.8; numbers and texts are the standard's. */
class ScpiErrorTest {

    @Test
    void anEntryIsANumberAndAText() {
        assertEquals(Optional.of(new ScpiError(0, "No error")), ScpiError.parse("0,\"No error\""));
        assertEquals(
                Optional.of(new ScpiError(-222, "Data out of range")), ScpiError.parse("-222,\"Data out of range\""));
        assertEquals(
                Optional.of(new ScpiError(-113, "Undefined header;FETC?")),
                ScpiError.parse("-113,\"Undefined header;FETC?\""));
        assertEquals(Optional.of(new ScpiError(-350, "Queue overflow")), ScpiError.parse("-350,\"Queue overflow\""));
    }

    @Test
    void aSignedZeroIsNoError() {
        assertTrue(ScpiError.parse("+0,\"No error\"").orElseThrow().isNone());
    }

    @Test
    void aReadingIsNoEntry() {
        assertEquals(Optional.empty(), ScpiError.parse("+1.25000000E+00"));
        assertEquals(Optional.empty(), ScpiError.parse("1,2"));
    }
}
