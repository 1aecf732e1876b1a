package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The nine digits are the customary check input (R. N. Williams, "A Painless Guide to CRC Error Detection Algorithms", 1993). */
class ChecksumTest {

    private static final String DIGITS = "123456789";

    @Test
    void crc16HasItsPublishedCheckValue() {
        assertEquals("29B1", Checksum.CRC_16_CCITT.of(DIGITS));
    }

    @Test
    void crc8HasItsPublishedCheckValue() {
        assertEquals("F4", Checksum.CRC_8.of(DIGITS));
    }

    @Test
    void exclusiveOrOfTheDigitsIsThatOfTheirCodes() {
        assertEquals("31", Checksum.XOR.of(DIGITS));
    }

    @Test
    void leadingZerosAreWritten() {
        assertEquals("00", Checksum.XOR.of("aa"));
        assertEquals("FFFF", Checksum.CRC_16_CCITT.of(""));
    }
}
