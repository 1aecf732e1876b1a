package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sample formats are those of WAVE files (Microsoft and IBM, Multimedia Programming Interface 1.0, 1991), little-endian. */
class EncodingTest {

    private static double sample(Encoding encoding, long value) {
        byte[] bytes = ByteBuffer.allocate(Long.BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putLong(value)
                .array();
        return encoding.sample(bytes, 0);
    }

    private static boolean isFull(Encoding encoding, long value) {
        return Math.abs(sample(encoding, value)) >= encoding.fullScale();
    }

    @ParameterizedTest
    @CsvSource({
        "UNSIGNED_8, 128, 192, 0, 255, 2, 254",
        "SIGNED_16, 0, 16384, -32768, 32767, -32766, 32766",
        "SIGNED_24, 0, 4194304, -8388608, 8388607, -8388000, 8388000",
        "SIGNED_32, 0, 1073741824, -2147483648, 2147483647, -2147380000, 2147380000"
    })
    void bothEndsOfTheScaleStandAtItAndWhatIsShortOfThemDoesNot(
            Encoding encoding, long zero, long half, long lowest, long highest, long above, long below) {
        assertEquals(0, sample(encoding, zero));
        assertEquals(0.5, sample(encoding, half));
        assertEquals(-1, sample(encoding, lowest));
        assertTrue(isFull(encoding, lowest) && isFull(encoding, highest));
        assertFalse(isFull(encoding, above) || isFull(encoding, below));
    }

    @ParameterizedTest
    @EnumSource(
            value = Encoding.class,
            names = {"FLOAT_32", "FLOAT_64"})
    void aFloatHasNoEndOfScale(Encoding encoding) {
        long far = encoding == Encoding.FLOAT_32 ? Float.floatToIntBits(-12.5f) : Double.doubleToLongBits(-12.5);
        assertEquals(-12.5, sample(encoding, far));
        assertFalse(isFull(encoding, far));
    }

    @Test
    void aSampleIsReadWhereItLies() {
        byte[] bytes = {9, 9, 0, 0x40, 9, 9};
        assertEquals(0.5, Encoding.SIGNED_16.sample(bytes, 2));
    }
}
