package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.signal.LevelKind;

/** What may be set, and what is refused. */
class SoundOptionsTest {

    private final SoundOptions usual = SoundOptions.defaults();

    @Test
    void eachCopyChangesOneThing() {
        assertEquals(Channel.MIX, usual.withChannel(Channel.MIX).channel());
        assertEquals(OptionalInt.of(96_000), usual.withRateHz(96_000).rateHz());
        assertEquals(OptionalInt.of(24), usual.withBits(24).bits());
        assertEquals(OptionalDouble.of(3.2), usual.withOhms(3.2).ohms());
        assertEquals(OptionalDouble.of(0.8), usual.withVoltsPerFullScale(0.8).voltsPerFullScale());
        assertEquals(
                LevelKind.RMS,
                usual.withMeter(usual.meter().withKind(LevelKind.RMS)).meter().kind());
        assertEquals(usual, usual.withChannel(Channel.MIX).withChannel(Channel.LEFT));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> usual.withOhms(0));
        assertThrows(IllegalArgumentException.class, () -> usual.withOhms(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> usual.withVoltsPerFullScale(-1));
        assertThrows(
                IllegalArgumentException.class, () -> new SoundCalibration("c", Channel.LEFT, 0, 1, Instant.EPOCH));
        assertEquals("left", Channel.LEFT.code());
    }
}
